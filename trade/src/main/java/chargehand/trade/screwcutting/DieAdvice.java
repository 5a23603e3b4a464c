package chargehand.trade.screwcutting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.thread.ScrewThread;
import java.util.Optional;

/** Whether to cut a thread with the tool or to run a die down it, and why. Common practice. */
final class DieAdvice {
    private static final Length LARGEST_BY_DIE_ALONE = Length.mm(12.7);
    private static final double COARSEST_BY_DIE_ALONE_MM = 1.75;

    private DieAdvice() {}

    static String of(ScrewThread thread, Optional<PitchTrain> train, boolean noTrain, LengthUnit unit) {
        if (!isMadeByDie(thread)) {
            return "Cut it with the tool: a thread of this form is not made with a die.";
        }
        if (noTrain) {
            return "Use a die led from the tailstock: no train of these wheels comes anywhere near.";
        }
        if (train.isPresent() && !train.get().isNearEnough()) {
            return "Use a die led from the tailstock: the nearest train is out by "
                    + LengthText.both(train.get().errorOver(), unit) + " over this length, which takes "
                    + LengthText.both(train.get().usesUp(), unit) + " off the effective diameter.";
        }
        if (thread.major().isMoreThan(LARGEST_BY_DIE_ALONE) || thread.pitch().inMm() > COARSEST_BY_DIE_ALONE_MM) {
            return "Cut it with the tool: at this size a die pulls too hard and runs out of true; a die may size the last cut.";
        }
        return "A die led from the tailstock is quicker at this size; cut it with the tool where it must run true to the rest.";
    }

    private static boolean isMadeByDie(ScrewThread thread) {
        return switch (thread.form()) {
            case ISO_METRIC, UNIFIED, WHITWORTH, WHITWORTH_PIPE, BRITISH_ASSOCIATION, CYCLE -> thread.starts() == 1;
            case TRAPEZOIDAL, ACME, SQUARE -> false;
        };
    }
}
