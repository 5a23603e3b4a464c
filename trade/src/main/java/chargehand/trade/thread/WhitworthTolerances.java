package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import java.util.Locale;
import java.util.Optional;

/**
 * Limits of threads of Whitworth form by the formulas of BS 84, in inches. The tolerance on the effective diameter of a
 * medium bolt is T = 0.002 ∛D + 0.003 √L + 0.005 √p, with D major diameter, L length engaged (taken as D) and p pitch;
 * the other classes are parts of it.
 */
final class WhitworthTolerances {
    private static final Source SOURCE = Source.memory("BS 84:1956");
    private static final double ALLOWANCE_OF_TOLERANCE = 0.3;
    private static final double LARGEST_WITH_ALLOWANCE = 0.75;
    private static final double SMALLEST_FOR_ALLOWANCE = 0.25;
    private static final double TINY = 1e-9;

    private enum Bolt {
        CLOSE(2.0 / 3, 0.013),
        MEDIUM(1, 0.020),
        FREE(1.5, 0.020);

        private final double ofTolerance;
        private final double minorFactor;

        Bolt(double ofTolerance, double minorFactor) {
            this.ofTolerance = ofTolerance;
            this.minorFactor = minorFactor;
        }
    }

    private enum Nut {
        MEDIUM(1),
        NORMAL(1.5);

        private final double ofTolerance;

        Nut(double ofTolerance) {
            this.ofTolerance = ofTolerance;
        }
    }

    private WhitworthTolerances() {}

    static ThreadLimits limits(ScrewThread thread, String fit) {
        Bolt bolt = bolt(fit);
        Nut nut = nut(fit);
        String written = (bolt + "/" + nut).toLowerCase(Locale.ROOT);
        return new ThreadLimits(
                written, Optional.of(external(thread, bolt)), Optional.of(internal(thread, nut)), SOURCE);
    }

    private static Bolt bolt(String fit) {
        return switch (words(fit)) {
            case "", "medium", "medium/medium", "medium/normal", "normal" -> Bolt.MEDIUM;
            case "close", "close/medium" -> Bolt.CLOSE;
            case "free", "free/normal" -> Bolt.FREE;
            default -> throw refused(fit);
        };
    }

    /** The nut that BS 84 recommends with the bolt, unless it is named. */
    private static Nut nut(String fit) {
        return switch (words(fit)) {
            case "", "medium", "close", "close/medium", "medium/medium" -> Nut.MEDIUM;
            case "free", "free/normal", "normal", "medium/normal" -> Nut.NORMAL;
            default -> throw refused(fit);
        };
    }

    private static String words(String fit) {
        return fit.strip().toLowerCase(Locale.ROOT);
    }

    private static Unreadable refused(String fit) {
        return new Unreadable(
                "'" + fit + "' is not a class of Whitworth thread: write close, medium, free or, for a nut, normal.");
    }

    private static DiameterLimits external(ScrewThread thread, Bolt bolt) {
        double p = thread.pitch().inInches();
        double effective = bolt.ofTolerance * tolerance(thread);
        Length allowance = allowance(thread, bolt);
        return new DiameterLimits(
                SizeLimits.below(thread.major().minus(allowance), Length.in(effective + 0.01 * Math.sqrt(p))),
                SizeLimits.below(thread.effective().minus(allowance), Length.in(effective)),
                SizeLimits.below(
                        thread.minor().minus(allowance), Length.in(effective + bolt.minorFactor * Math.sqrt(p))));
    }

    private static DiameterLimits internal(ScrewThread thread, Nut nut) {
        return new DiameterLimits(
                SizeLimits.atLeast(thread.major()),
                SizeLimits.above(thread.effective(), Length.in(nut.ofTolerance * tolerance(thread))),
                SizeLimits.above(thread.minorInternal(), Length.in(minorTolerance(thread))));
    }

    private static double tolerance(ScrewThread thread) {
        double d = thread.major().in();
        return 0.002 * Math.cbrt(d)
                + 0.003 * Math.sqrt(d)
                + 0.005 * Math.sqrt(thread.pitch().inInches());
    }

    /** Room for plating: medium and free bolts up to 3/4 in; below 1/4 in that of the 1/4 in size. */
    private static Length allowance(ScrewThread thread, Bolt bolt) {
        double d = thread.major().in();
        if (bolt == Bolt.CLOSE || d > LARGEST_WITH_ALLOWANCE + TINY) {
            return Length.ZERO;
        }
        ScrewThread judged = d < SMALLEST_FOR_ALLOWANCE ? quarterInch(thread) : thread;
        return Length.in(ALLOWANCE_OF_TOLERANCE * tolerance(judged));
    }

    private static ScrewThread quarterInch(ScrewThread thread) {
        return Threads.list(thread.series(), Length.in(SMALLEST_FOR_ALLOWANCE)).stream()
                .findFirst()
                .orElse(thread);
    }

    private static double minorTolerance(ScrewThread thread) {
        double tpi = thread.pitch().tpi().doubleValue();
        double fixed = tpi >= 26 ? 0.004 : tpi > 20 ? 0.005 : 0.007;
        return 0.2 * thread.pitch().inInches() + fixed;
    }
}
