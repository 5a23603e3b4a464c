package chargehand.book.method;

import chargehand.book.shop.ShopTexts;
import chargehand.part.Part;
import java.util.List;

/** Works out how a part is made in this shop. */
@FunctionalInterface
public interface MethodPlanner {
    /**
     * A method with its proof, or why there is none.
     *
     * @param count how many pieces, from 1
     * @param wishes what is asked of the method beside the part, each as people write it
     * @param texts the shop's kit and rack
     */
    PlannerReply plan(Part part, int count, List<String> wishes, ShopTexts texts);
}
