package chargehand.book.method;

import chargehand.book.shop.ShopTexts;
import chargehand.part.Part;

/** Works out how a part is made in this shop. */
@FunctionalInterface
public interface MethodPlanner {
    /**
     * A method with its proof, or why there is none.
     *
     * @param count how many pieces, from 1
     * @param texts the shop's kit and rack
     */
    PlannerReply plan(Part part, int count, ShopTexts texts);
}
