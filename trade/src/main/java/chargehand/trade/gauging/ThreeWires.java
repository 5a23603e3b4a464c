package chargehand.trade.gauging;

import chargehand.measure.Length;
import chargehand.trade.sum.Source;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadForm;
import chargehand.trade.thread.ThreadProfile;

/**
 * Measuring a thread over three wires of one size laid in its grooves, two on one side and one on the other.
 *
 * <p>With E effective diameter, p pitch, w wire, α half the angle between the flanks, λ helix angle: a wire rests on both
 * flanks and the size over the wires is {@code M = E + w (1 + cosec α) − (p / 2) cot α}. The wires lie a little askew along
 * the helix and stand higher for it by {@code w (√(cosec²α + cot²α tan²λ) − cosec α)}, the rake correction: microns on a
 * fastener, more on a coarse or many-start screw. Source of both: ASME B1.2, BS 5590 (from memory), and the first in Jones,
 * Turning and Boring.
 */
final class ThreeWires {
    /** Where the three-wire formula was read. */
    static final Source SOURCE = new Source("Jones, Turning and Boring: three-wire formulas");

    private static final double SMALLEST_60 = 0.56;
    private static final double LARGEST_60 = 0.90;
    private static final double SMALLEST_WHITWORTH = 0.54;
    private static final double LARGEST_WHITWORTH = 0.76;

    private final ScrewThread thread;
    private final double half;
    private final double pitchMm;

    ThreeWires(ScrewThread thread) {
        this.thread = thread;
        this.half = thread.form().includedAngle().half().inRadians();
        this.pitchMm = thread.pitch().inMm();
    }

    /** Whether wires can rest on its flanks at all: they cannot where the flanks stand straight. */
    static boolean suits(ScrewThread thread) {
        return thread.form() != ThreadForm.SQUARE;
    }

    /** The wire that touches the flanks at the effective diameter, so that an angle a little out does not matter. */
    Length best() {
        return Length.mm(pitchMm / (2 * Math.cos(half)));
    }

    /** The smallest wire worth using. */
    Length smallest() {
        return switch (thread.form()) {
            case ISO_METRIC, UNIFIED -> Length.mm(SMALLEST_60 * pitchMm);
            case WHITWORTH, WHITWORTH_PIPE -> Length.mm(SMALLEST_WHITWORTH * pitchMm);
            case BRITISH_ASSOCIATION, CYCLE, TRAPEZOIDAL, ACME, SQUARE -> flush();
        };
    }

    /** The largest wire worth using. */
    Length largest() {
        return switch (thread.form()) {
            case ISO_METRIC, UNIFIED -> Length.mm(LARGEST_60 * pitchMm);
            case WHITWORTH, WHITWORTH_PIPE -> Length.mm(LARGEST_WHITWORTH * pitchMm);
            case BRITISH_ASSOCIATION, CYCLE, TRAPEZOIDAL, ACME, SQUARE -> atTopOfFlank();
        };
    }

    /** Whether the limits of the wire are what handbooks print, and not worked out from the form. */
    boolean wireLimitsArePrinted() {
        return switch (thread.form()) {
            case ISO_METRIC, UNIFIED, WHITWORTH, WHITWORTH_PIPE -> true;
            case BRITISH_ASSOCIATION, CYCLE, TRAPEZOIDAL, ACME, SQUARE -> false;
        };
    }

    /** The wire that comes up just flush with the crests. */
    private Length flush() {
        return Length.mm((thread.profile().effectiveDrop().mm() + pitchMm / 2 / Math.tan(half)) / factor());
    }

    /** The wire that touches at the outer end of the straight flank. */
    private Length atTopOfFlank() {
        ThreadProfile profile = thread.profile();
        double rounding = profile.crestRadius().orElse(Length.ZERO).mm() * (1 - Math.sin(half));
        double above = profile.effectiveDrop().mm() / 2 - rounding;
        return Length.mm((pitchMm / 2 + 2 * above * Math.tan(half)) / Math.cos(half));
    }

    /** How much the size over the wires grows with the wire: 3 for 60° threads, 3.1657 for Whitworth. */
    double factor() {
        return 1 + 1 / Math.sin(half);
    }

    /** What is taken off for the groove: 0.8660 p for 60° threads, 0.9605 p for Whitworth. */
    Length groove() {
        return Length.mm(pitchMm / 2 / Math.tan(half));
    }

    /** The size over the wires less the effective diameter. */
    Length constant(Length wire) {
        return wire.times(factor()).minus(groove());
    }

    /** The size over the wires at the basic effective diameter. */
    Length over(Length wire) {
        return thread.effective().plus(constant(wire));
    }

    /** The effective diameter that a size over the wires means. */
    Length effective(Length over, Length wire) {
        return over.minus(constant(wire));
    }

    /** How much higher the wires stand because they follow the helix. */
    Length rake(Length wire) {
        double cosec = 1 / Math.sin(half);
        double askew = thread.helixAngle().tan() / Math.tan(half);
        return wire.times(Math.sqrt(cosec * cosec + askew * askew) - cosec);
    }
}
