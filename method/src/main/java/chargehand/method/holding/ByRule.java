package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;

/** Lengths that are set by rule and not by dial, such as how far work stands out of its jaws. */
public final class ByRule {
    /** What a length may be over a step of the rule without being taken to the next, as a part of the step. */
    private static final double A_LITTLE = 0.02;

    private ByRule() {}

    /** The length as it is set and said: to half a millimetre or a sixteenth of an inch, upward, so that tools stay clear. */
    public static Length up(Length length, LengthUnit unit) {
        Length step = unit == LengthUnit.INCH ? Length.inch(1, 16) : Length.mm(0.5);
        return step.times(Math.ceil(length.over(step) - A_LITTLE));
    }
}
