package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Condition;
import chargehand.trade.fit.Iso286;
import chargehand.trade.sum.Source;

/** What must come off the surface of stock before it is sound, and when a drawn surface may be left as it is. */
final class Skin {
    /** Off a bright surface, enough for what a chuck runs out. */
    private static final Length BRIGHT = Length.mm(0.25);

    /** Off hot-rolled stock, for scale and what it is out of round. */
    private static final Length BLACK = Length.mm(1.5);

    /** Off a casting's skin. */
    private static final Length CAST = Length.mm(2);

    /** Off a reclaimed piece, for wear and pitting. */
    private static final Length RECLAIMED = Length.mm(1.5);

    /** Where these figures come from. */
    static final Source SOURCE = Source.COMMON_PRACTICE;

    /** To what bright bar is drawn. */
    static final String DRAWN_TO = "h11";

    /** Where that comes from. */
    static final Source DRAWN_SOURCE = Source.memory("BS EN 10278, bright drawn bar, usual class");

    private Skin() {}

    /** What comes off each side to clean it. */
    static Length perSide(Condition condition) {
        return switch (condition) {
            case BRIGHT -> BRIGHT;
            case BLACK -> BLACK;
            case CAST -> CAST;
            case RECLAIMED -> RECLAIMED;
        };
    }

    /**
     * Whether stock of this size may be left as it is drawn: it is bright, it lies within the limits, and they leave as much
     * room as the bar is drawn to.
     */
    static boolean mayStay(Length stock, Limits limits, Condition condition) {
        return switch (condition) {
            case BRIGHT ->
                limits.contain(stock)
                        && !limits.tolerance().isLessThan(drawn(stock).tolerance());
            case BLACK -> false;
            case CAST -> false;
            case RECLAIMED -> false;
        };
    }

    /** What to mind where a surface stays as drawn. */
    static String measureFirst(Piece piece) {
        return "A surface of " + piece.name() + " stays as it is drawn: measure it before it is cut into.";
    }

    /** To what limits bright stock of this size is drawn. */
    static Limits drawn(Length stock) {
        return Iso286.limits(stock, DRAWN_TO).limits();
    }
}
