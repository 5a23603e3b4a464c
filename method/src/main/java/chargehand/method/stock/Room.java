package chargehand.method.stock;

import chargehand.measure.Length;

/** Whether a part goes into a piece of stock, seen across the bar. */
sealed interface Room {
    /**
     * It does.
     *
     * @param raw the stock
     * @param along the part's finished length along the bar
     * @param asDrawn whether a surface of the stock stays as drawn
     * @param say how it compares, for the working
     */
    record Enough(Raw raw, Length along, boolean asDrawn, String say) implements Room {}

    /** It does not. */
    record NotEnough(String why) implements Room {}
}
