package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import java.util.Locale;
import java.util.Optional;

/**
 * Limits of BA threads by the formulas of BS 93:1951, as Machinery's Handbook 31 p. 2115 prints them, in millimetres of the
 * pitch: close and normal outside, one class inside. Normal threads to 10 BA are 0.025 mm smaller than basic; close ones go to
 * 10 BA only.
 */
final class BritishAssociationTolerances {
    private static final Source SOURCE = Source.published("BS 93:1951, formulas in Machinery's Handbook 31 p. 2115");
    private static final Length NORMAL_ALLOWANCE = Length.mm(0.025);
    private static final int LAST_WITH_ALLOWANCE = 10;

    private BritishAssociationTolerances() {}

    static ThreadLimits limits(ScrewThread thread, String fit) {
        double pitch = thread.pitch().inMm();
        var internal = new DiameterLimits(
                SizeLimits.atLeast(thread.major()),
                SizeLimits.above(thread.effective(), Length.mm(0.12 * pitch + 0.03)),
                SizeLimits.above(thread.minorInternal(), Length.mm(0.375 * pitch)));
        boolean small = Integer.parseInt(thread.size()) > LAST_WITH_ALLOWANCE;
        return switch (fit.strip().toLowerCase(Locale.ROOT)) {
            case "", "normal" ->
                new ThreadLimits("normal", Optional.of(normal(thread, small)), Optional.of(internal), SOURCE);
            case "close" -> {
                if (small) {
                    throw new Unreadable("the close class ends at 10 BA: write normal, or leave the class out.");
                }
                yield new ThreadLimits("close", Optional.of(close(thread)), Optional.of(internal), SOURCE);
            }
            default -> throw new Unreadable("'" + fit + "' is not a class of BA thread: write close or normal.");
        };
    }

    private static DiameterLimits close(ScrewThread thread) {
        double pitch = thread.pitch().inMm();
        return new DiameterLimits(
                SizeLimits.below(thread.major(), Length.mm(0.15 * pitch)),
                SizeLimits.below(thread.effective(), Length.mm(0.08 * pitch + 0.02)),
                SizeLimits.below(thread.minor(), Length.mm(0.16 * pitch + 0.04)));
    }

    private static DiameterLimits normal(ScrewThread thread, boolean small) {
        double pitch = thread.pitch().inMm();
        Length allowance = small ? Length.ZERO : NORMAL_ALLOWANCE;
        return new DiameterLimits(
                SizeLimits.below(thread.major().minus(allowance), Length.mm((small ? 0.25 : 0.20) * pitch)),
                SizeLimits.below(thread.effective().minus(allowance), Length.mm(0.10 * pitch + 0.025)),
                SizeLimits.below(thread.minor().minus(allowance), Length.mm(0.20 * pitch + 0.05)));
    }
}
