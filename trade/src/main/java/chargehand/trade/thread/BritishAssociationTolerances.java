package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import java.util.Optional;

/**
 * Limits of inside BA threads by the formulas of BS 93:2008, annex B, in millimetres of the pitch. The outside classes are
 * left out: their allowance is not held here.
 */
final class BritishAssociationTolerances {
    private static final Source SOURCE = Source.published("BS 93:2008 annex B");

    private BritishAssociationTolerances() {}

    static ThreadLimits limits(ScrewThread thread, String fit) {
        if (!fit.isBlank()) {
            throw new Unreadable(
                    "BA has one class of inside thread, and its outside classes are not held here: leave the"
                            + " class out.");
        }
        double pitch = thread.pitch().inMm();
        var internal = new DiameterLimits(
                SizeLimits.atLeast(thread.major()),
                SizeLimits.above(thread.effective(), Length.mm(0.12 * pitch + 0.03)),
                SizeLimits.above(thread.minorInternal(), Length.mm(0.375 * pitch)));
        return new ThreadLimits("inside", Optional.empty(), Optional.of(internal), SOURCE);
    }
}
