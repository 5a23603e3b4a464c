package chargehand.trade.bolt;

import chargehand.measure.Length;
import chargehand.trade.thread.DiameterLimits;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.SizeLimits;
import chargehand.trade.thread.ThreadForm;
import chargehand.trade.thread.ThreadLimits;
import java.util.Optional;

/**
 * The areas of a screw thread that bear load.
 *
 * <p>The tensile area is that of a circle of the mean of effective and root diameter, as ISO 898-1 takes it; for Unified
 * threads π/4 (d − 0.9743 p)², as the handbooks do. Shear areas of engaged threads follow FED-STD-H28, with the limits of the
 * usual class where they are held here and basic sizes elsewhere. That rule is printed for 60°; for other forms the width of a
 * thread at a diameter is taken from its own flanks in the same way. Roundings of crest and root are left out, which makes the
 * areas a little small.
 *
 * @param thread the thread
 */
public record BoltStrength(ScrewThread thread) {
    private static final double UNIFIED_DROP = 0.9743;
    private static final double METRIC_DROP = 0.9382;

    /** The area that a pull acts on (mm²). */
    public double tensileAreaMm2() {
        double pitch = thread.pitch().inMm();
        double diameter = switch (thread.form()) {
            case ISO_METRIC -> thread.major().mm() - METRIC_DROP * pitch;
            case UNIFIED -> thread.major().mm() - UNIFIED_DROP * pitch;
            case WHITWORTH, WHITWORTH_PIPE, BRITISH_ASSOCIATION, TRAPEZOIDAL, ACME, CYCLE, SQUARE ->
                (thread.effective().mm() + thread.core().mm()) / 2;
        };
        return Math.PI / 4 * diameter * diameter;
    }

    /** Whether the rule for stripping is printed for this form: threads of 60°. */
    public boolean isStrippingPrinted() {
        return thread.form() == ThreadForm.ISO_METRIC || thread.form() == ThreadForm.UNIFIED;
    }

    /** The bolt's own thread sheared off at the nut's minor diameter, for each millimetre engaged (mm²). */
    public double boltShearAreaMm2() {
        double bore = limit(ThreadLimits::internal, DiameterLimits::minor, SizeLimits::most, thread.minorInternal());
        double effective =
                limit(ThreadLimits::external, DiameterLimits::effective, SizeLimits::least, thread.effective());
        double pitch = thread.pitch().inMm();
        return Math.PI * bore * (0.5 + (effective - bore) * flankSlope() / pitch);
    }

    /** The nut's thread sheared off at the bolt's major diameter, for each millimetre engaged (mm²). */
    public double nutShearAreaMm2() {
        double major = limit(ThreadLimits::external, DiameterLimits::major, SizeLimits::least, thread.major());
        double effective =
                limit(ThreadLimits::internal, DiameterLimits::effective, SizeLimits::most, thread.effective());
        double pitch = thread.pitch().inMm();
        return Math.PI * major * (0.5 + (major - effective) * flankSlope() / pitch);
    }

    /** How much wider a thread grows on each side for its height: 1/√3 for 60°, nothing for a square thread. */
    private double flankSlope() {
        return thread.form().includedAngle().half().tan();
    }

    private interface Side {
        Optional<DiameterLimits> of(ThreadLimits limits);
    }

    private interface Diameter {
        SizeLimits of(DiameterLimits limits);
    }

    private interface End {
        Optional<Length> of(SizeLimits limits);
    }

    private double limit(Side side, Diameter diameter, End end, Length basic) {
        return ThreadLimits.find(thread)
                .flatMap(side::of)
                .flatMap(limits -> end.of(diameter.of(limits)))
                .orElse(basic)
                .mm();
    }
}
