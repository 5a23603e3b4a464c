package chargehand.web;

import chargehand.book.use.Desk;
import chargehand.trade.sum.Sums;

/**
 * What the pages work with.
 *
 * @param desk everything people do with the book
 * @param sums every sum there is
 * @param sheets draws a part and prints a method
 */
public record Counter(Desk desk, Sums sums, Sheets sheets) {
    /** Who does what is done on these pages, until people sign in. */
    public static final String WHO = "lead hand";

    /** The shop's name. */
    public String shop() {
        return desk.keepShop().shop().name();
    }
}
