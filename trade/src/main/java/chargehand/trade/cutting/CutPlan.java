package chargehand.trade.cutting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.sum.Working;

/**
 * Settles how a cut is made: speed, feed, passes, force, power, time and finish, from published speeds and cutting forces,
 * the machine's own steps, and common practice for the rest.
 *
 * <p>Speed follows material and tool; the spindle takes the machine's own step at or below it. Feed is the usual one, or
 * the most that leaves the finish wanted. Depth is shared out in passes, none deeper than usual or than the motor can pull.
 */
public final class CutPlan {
    /** How far a tool starts in the air before the work. */
    static final Length RUN_IN = Length.mm(2);

    /** No more is fed in one turn, even by a milling cutter of many teeth. */
    private static final Length MOST_FEED = Length.mm(20);

    private CutPlan() {}

    /** The settings for a cut, without the working. */
    public static CutSettings of(Cut cut) {
        return of(cut, new Working());
    }

    /**
     * The settings for a cut, each step written down.
     *
     * @throws CannotCut when the cut cannot be made as asked
     */
    public static CutSettings of(Cut cut, Working working) {
        CutSettings settings = settings(cut, working);
        boolean feeds = cut.operation() != Operation.THREAD && cut.operation() != Operation.TAP;
        if (feeds && settings.feed().isMoreThan(MOST_FEED)) {
            throw new CannotCut(
                    "feeds",
                    "the finest of these feeds comes to " + LengthText.mm(settings.feed(), LengthText.MICROMETRE)
                            + " for one turn, coarser than any cut: give finer ones.");
        }
        return settings;
    }

    private static CutSettings settings(Cut cut, Working working) {
        return switch (cut.operation()) {
            case TURN, FACE, BORE, PART -> new TurningPlan(cut, working).settings();
            case THREAD -> new ThreadingPlan(cut, working).settings();
            case DRILL, REAM, TAP -> new HolePlan(cut, working).settings();
            case MILL -> new MillingPlan(cut, working).settings();
        };
    }
}
