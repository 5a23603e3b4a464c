package chargehand.trade.cutting;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How a depth is shared out among passes. */
public final class Passes {
    /** A pass that is only rounding more than the most is not worth another. */
    private static final double HAIR = 1e-6;

    private static final int MOST_PASSES = 500;
    private static final int MOST_GROOVE_PASSES = 40;

    private Passes() {}

    static void refuseTooMany(Length depth, Length most) {
        if (depth.over(most) > MOST_PASSES) {
            throw new CannotCut("depth", "this would take more than " + MOST_PASSES + " passes: saw it off first.");
        }
    }

    /** Equal passes, none deeper than {@code most}. */
    public static List<Length> equal(Length depth, Length most) {
        int passes = (int) Math.max(1, Math.ceil(depth.over(most) - HAIR));
        return Collections.nCopies(passes, depth.times(1.0 / passes));
    }

    /** Equal roughing passes and a last one of the finishing depth; all finishing where there is no more than that. */
    public static List<Length> withFinish(Length depth, Length most, Length finish) {
        if (!depth.isMoreThan(finish)) {
            return List.of(depth);
        }
        var passes = new ArrayList<>(equal(depth.minus(finish), most));
        passes.add(finish);
        return List.copyOf(passes);
    }

    /**
     * The steps of cutting a V-shaped groove so that each pass cuts the same area: the depth reached after pass i of n is the
     * whole depth times √(i/n). The first step is no deeper than {@code first}, unless that took more than
     * {@value #MOST_GROOVE_PASSES} passes.
     */
    public static List<Length> groove(Length depth, Length first) {
        double ratio = depth.over(first);
        int passes = (int) Math.min(MOST_GROOVE_PASSES, Math.max(1, Math.ceil(ratio * ratio - HAIR)));
        var steps = new ArrayList<Length>();
        Length reached = Length.ZERO;
        for (int pass = 1; pass <= passes; pass++) {
            Length next = depth.times(Math.sqrt((double) pass / passes));
            steps.add(next.minus(reached));
            reached = next;
        }
        return List.copyOf(steps);
    }
}
