package chargehand.method.stock;

import chargehand.measure.Length;
import java.util.List;

/** Whether a part goes into a piece of stock, seen across the bar. */
sealed interface Room {
    /**
     * It does.
     *
     * @param raw the stock
     * @param along the part's finished length along the bar
     * @param asDrawn whether a surface of the stock stays as drawn
     * @param say how it compares, for the working
     * @param cautions what to mind about its size
     */
    record Enough(Raw raw, Length along, boolean asDrawn, String say, List<String> cautions) implements Room {
        public Enough {
            cautions = List.copyOf(cautions);
        }
    }

    /** It does not. */
    record NotEnough(String why) implements Room {}
}
