package chargehand.trade.screwcutting;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.trade.thread.DiameterLimits;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.SizeLimits;
import chargehand.trade.thread.ThreadLimits;
import chargehand.trade.wheels.CutPitch;
import chargehand.trade.wheels.Train;
import chargehand.trade.wheels.WheelSet;
import chargehand.trade.wheels.WheelTrains;
import java.util.List;
import java.util.Optional;

/**
 * The nearest train for a thread on a lathe, and whether it is near enough.
 *
 * <p>A thread whose pitch is out by δ over the length engaged goes into a perfect nut only if its effective diameter is
 * smaller by δ cot α, with α half the angle between the flanks. It is near enough while that uses up no more than half of
 * the tolerance on the effective diameter.
 *
 * @param cut what the train cuts
 * @param errorOver how far the pitch is out over the length, on either side
 * @param usesUp what that takes from the effective diameter
 * @param allowed half of the tolerance on the effective diameter
 */
record PitchTrain(CutPitch cut, Length errorOver, Length usesUp, Length allowed) {
    private static final Length ALLOWED_WITHOUT_CLASS = Length.mm(0.025);
    private static final double PART_OF_TOLERANCE = 0.5;
    private static final double SQUARE_COTANGENT = 0;

    static Optional<PitchTrain> find(ScrewThread thread, Length length, Pitch leadscrew, List<Integer> wheels) {
        return WheelTrains.of(new WheelSet(wheels)).best(CutPitch.ratio(thread.lead(), leadscrew), 1).stream()
                .findFirst()
                .map(tried -> of(thread, length, leadscrew, tried.train()));
    }

    private static PitchTrain of(ScrewThread thread, Length length, Pitch leadscrew, Train train) {
        CutPitch cut = CutPitch.of(train, leadscrew, thread.lead());
        Length errorOver = cut.errorOver(length).abs();
        double tangent = thread.form().includedAngle().half().tan();
        double cotangent = tangent > 0 ? 1 / tangent : SQUARE_COTANGENT;
        return new PitchTrain(cut, errorOver, errorOver.times(cotangent), allowed(thread));
    }

    private static Length allowed(ScrewThread thread) {
        return ThreadLimits.find(thread)
                .flatMap(ThreadLimits::external)
                .map(DiameterLimits::effective)
                .flatMap(PitchTrain::tolerance)
                .map(tolerance -> tolerance.times(PART_OF_TOLERANCE))
                .orElse(ALLOWED_WITHOUT_CLASS);
    }

    private static Optional<Length> tolerance(SizeLimits limits) {
        return limits.most().flatMap(most -> limits.least().map(most::minus));
    }

    /** A square thread has no flanks to ease: its pitch error itself is held to the same. */
    boolean isNearEnough() {
        return !Length.most(errorOver, usesUp).isMoreThan(allowed);
    }
}
