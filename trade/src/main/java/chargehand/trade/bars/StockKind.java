package chargehand.trade.bars;

import chargehand.measure.Length;

/**
 * Bars of one length that may be cut.
 *
 * @param length of the whole bar
 * @param offers what of it can be cut into pieces, each piece taking its length and one cut (nm)
 * @param available how many there are; {@link #NO_END} when they are bought as needed
 * @param cost what one costs in the aim of the plan, its length settling between plans alike
 * @param price what one is paid for, nought when prices are not given
 */
record StockKind(Length length, long offers, int available, double cost, double price) {
    /** As many as it takes. */
    static final int NO_END = Integer.MAX_VALUE;

    boolean isBought() {
        return available == NO_END;
    }
}
