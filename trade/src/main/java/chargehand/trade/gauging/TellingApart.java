package chargehand.trade.gauging;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The measurement that would best tell two threads apart, and what it would show on each.
 *
 * @param clearness how many times the usual error of the measurement the two differ by
 * @param say what to measure and what to expect, in a sentence
 */
record TellingApart(double clearness, String say) {
    private static final double LEAST_CLEAR = 2;
    private static final int THREADS_COUNTED = 10;
    private static final double RULE_ERROR_MM = 0.2;
    private static final double GAUGE_ERROR_DEGREES = 2;
    private static final double DIAMETER_ERROR_MM = 0.05;
    private static final double TAPER_CLEARNESS = 4;

    /** The best of the ways, unless none would show anything. */
    static Optional<TellingApart> find(ScrewThread one, ScrewThread other, boolean inside, LengthUnit unit) {
        return ways(one, other, inside, unit)
                .max(Comparator.comparingDouble(TellingApart::clearness))
                .filter(best -> best.clearness() >= LEAST_CLEAR);
    }

    private static Stream<TellingApart> ways(ScrewThread one, ScrewThread other, boolean inside, LengthUnit unit) {
        return List.of(
                pitch(one, other, unit), angle(one, other), taper(one, other), diameter(one, other, inside, unit))
                .stream();
    }

    private static TellingApart pitch(ScrewThread one, ScrewThread other, LengthUnit unit) {
        Length ofOne = one.lead().length().times(THREADS_COUNTED);
        Length ofOther = other.lead().length().times(THREADS_COUNTED);
        return new TellingApart(
                ofOne.minus(ofOther).abs().mm() / RULE_ERROR_MM,
                String.format(
                        Locale.ROOT,
                        "Measure over %d threads with a rule: %s is %s, %s is %s.",
                        THREADS_COUNTED,
                        one,
                        LengthText.both(ofOne, unit),
                        other,
                        LengthText.both(ofOther, unit)));
    }

    private static TellingApart angle(ScrewThread one, ScrewThread other) {
        Angle ofOne = one.form().includedAngle();
        Angle ofOther = other.form().includedAngle();
        return new TellingApart(
                Math.abs(ofOne.degrees() - ofOther.degrees()) / GAUGE_ERROR_DEGREES,
                "Try a form gauge against the light: " + one + " is "
                        + one.form().title() + ", " + other + " is "
                        + other.form().title() + ".");
    }

    private static TellingApart taper(ScrewThread one, ScrewThread other) {
        ScrewThread tapered = one.isTaper() ? one : other;
        return new TellingApart(
                one.isTaper() == other.isTaper() ? 0 : TAPER_CLEARNESS,
                "Measure at both ends: " + tapered + " tapers 1 in 16 on diameter, the other does not.");
    }

    private static TellingApart diameter(ScrewThread one, ScrewThread other, boolean inside, LengthUnit unit) {
        Length ofOne = inside ? one.minorInternal() : one.major();
        Length ofOther = inside ? other.minorInternal() : other.major();
        return new TellingApart(
                ofOne.minus(ofOther).abs().mm() / DIAMETER_ERROR_MM,
                "Measure where it is least worn, next to the shoulder or on the mating part: " + one + " is "
                        + LengthText.both(ofOne, unit) + ", " + other + " is " + LengthText.both(ofOther, unit) + ".");
    }
}
