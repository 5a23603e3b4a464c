package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Limits of Unified threads by the formulas of ASME B1.1, in inches: D major diameter, p pitch, Le length of engagement (D
 * for the coarse and fine series, 9p for others). Limits are rounded as the standard prints them.
 */
final class UnifiedTolerances {
    private static final Source SOURCE = Source.memory("ASME B1.1");
    private static final Pattern CLASSES = Pattern.compile("([123])[AB](?:[/ -]+\\1[AB])?");
    private static final double ALLOWANCE_OF_TOLERANCE = 0.300;
    private static final double PITCHES_ENGAGED = 9;
    private static final double MILLION = 1e6;
    private static final Length PRINTED = Length.in(0.0001);
    private static final Length PRINTED_MINOR = Length.in(0.001);
    private static final Length LEAST_COARSELY_PRINTED = Length.in(0.138);
    private static final double SMALL_DIAMETER = 0.25;
    private static final double COARSEST_BY_FORMULA_TPI = 4;
    private static final double COARSEST_CLOSE_BY_FORMULA_TPI = 12.5;

    private final ScrewThread thread;
    private final double d;
    private final double p;

    private UnifiedTolerances(ScrewThread thread) {
        this.thread = thread;
        this.d = thread.major().in();
        this.p = thread.pitch().inInches();
    }

    static ThreadLimits limits(ScrewThread thread, String fit) {
        int number = number(fit);
        var rules = new UnifiedTolerances(thread);
        return new ThreadLimits(
                number + "A/" + number + "B",
                Optional.of(rules.external(number)),
                Optional.of(rules.internal(number)),
                SOURCE);
    }

    private static int number(String fit) {
        if (fit.isBlank()) {
            return 2;
        }
        Matcher classes = CLASSES.matcher(fit.strip());
        if (!classes.matches()) {
            throw new Unreadable(
                    "'" + fit + "' is not a class of Unified thread: write 2A, 2B, 2A/2B, or 1 or 3 for 2.");
        }
        return Integer.parseInt(classes.group(1));
    }

    private DiameterLimits external(int number) {
        double factor = number == 1 ? 1.5 : number == 2 ? 1 : 0.75;
        double effective = factor * effectiveTolerance();
        Length allowance = printed(number == 3 ? 0 : ALLOWANCE_OF_TOLERANCE * effectiveTolerance());
        double major = (number == 1 ? 0.090 : 0.060) * Math.cbrt(p * p);
        return new DiameterLimits(
                SizeLimits.below(thread.major().minus(allowance), printed(major))
                        .rounded(PRINTED),
                SizeLimits.below(basicEffective().minus(allowance), printed(effective))
                        .rounded(PRINTED),
                SizeLimits.atMost(thread.minor().minus(allowance)).rounded(PRINTED));
    }

    private DiameterLimits internal(int number) {
        double factor = number == 1 ? 1.95 : number == 2 ? 1.3 : 0.975;
        boolean fine = number == 3 || thread.major().isLessThan(LEAST_COARSELY_PRINTED);
        return new DiameterLimits(
                SizeLimits.atLeast(thread.major()),
                SizeLimits.above(basicEffective(), printed(factor * effectiveTolerance()))
                        .rounded(PRINTED),
                SizeLimits.above(printed(thread.minorInternal().in()), printed(minorTolerance(number)))
                        .rounded(fine ? PRINTED : PRINTED_MINOR));
    }

    /** Tolerance on the effective diameter of class 2A, to six places, from which all others follow. */
    private double effectiveTolerance() {
        double engaged = Threads.isListed(thread) ? d : PITCHES_ENGAGED * p;
        double exact = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(engaged) + 0.015 * Math.cbrt(p * p);
        return Math.round(exact * MILLION) / MILLION;
    }

    private double minorTolerance(int number) {
        double byPitch = 1 / p >= COARSEST_BY_FORMULA_TPI ? 0.25 * p - 0.4 * p * p : 0.15 * p;
        if (number < 3 && d >= SMALL_DIAMETER) {
            return byPitch;
        }
        double closeLeast = 1 / p > COARSEST_CLOSE_BY_FORMULA_TPI ? 0.23 * p - 1.5 * p * p : 0.120 * p;
        double least = number == 3 ? closeLeast : byPitch;
        return Math.clamp(0.05 * Math.cbrt(p * p) + 0.03 * p / d - 0.002, least, 0.394 * p);
    }

    private Length basicEffective() {
        return printed(thread.effective().in());
    }

    private static Length printed(double inches) {
        return SizeLimits.rounded(Length.in(inches), PRINTED);
    }
}
