package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadLimits;
import java.util.Optional;

/**
 * The hole to drill for, before a drill is chosen.
 *
 * @param rule how it was come by
 * @param diameter the hole aimed at
 * @param least the smallest that the tap has room in: the basic minor diameter of the inside thread
 * @param limits the limits of the thread's usual class, where they are held
 */
record HoleAim(HoleRule rule, Length diameter, Length least, Optional<ThreadLimits> limits) {
    private static final double THREE_QUARTERS = 0.75;

    static HoleAim of(ScrewThread thread, HoleRule rule) {
        return new HoleAim(rule, rule.hole(thread), thread.minorInternal(), ThreadLimits.find(thread));
    }

    /** What tables print for the thread when nothing is asked. */
    static HoleAim usual(ScrewThread thread) {
        return of(thread, usualRule(thread));
    }

    private static HoleRule usualRule(ScrewThread thread) {
        return switch (thread.form()) {
            case ISO_METRIC -> new HoleRule.LessPitch();
            case UNIFIED, BRITISH_ASSOCIATION, CYCLE ->
                new HoleRule.Part(THREE_QUARTERS, "Tables take about three quarters of the thread", false);
            case WHITWORTH, WHITWORTH_PIPE ->
                most(ThreadLimits.find(thread))
                        .<HoleRule>map(HoleRule.LargestInLimits::new)
                        .orElseGet(HoleRule.Whole::new);
            case TRAPEZOIDAL, ACME, SQUARE -> new HoleRule.Whole();
        };
    }

    private static Optional<Length> most(Optional<ThreadLimits> limits) {
        return limits.flatMap(ThreadLimits::internal)
                .flatMap(inside -> inside.minor().most());
    }

    /** The largest that the inside thread's usual class allows, where limits are held. */
    Optional<Length> most() {
        return most(limits);
    }

    boolean isAsked() {
        return rule instanceof HoleRule.Part part && part.asked();
    }

    boolean isWithinLimits(Length hole) {
        return !hole.isLessThan(least)
                && most().map(limit -> !hole.isMoreThan(limit)).orElse(true);
    }
}
