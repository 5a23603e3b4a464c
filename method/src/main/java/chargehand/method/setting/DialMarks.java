package chargehand.method.setting;

import chargehand.method.kit.ScrewCutting;
import chargehand.trade.screwcutting.ChasingDial;
import chargehand.trade.screwcutting.ChasingDial.Closing;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.wheels.CutPitch;
import java.util.List;

/** At which marks of the lathe's chasing dial the half-nut may be closed again, said to the person who does it. */
final class DialMarks {
    private static final String KEEP_CLOSED = "keep the nut closed and reverse the lathe";

    private DialMarks() {}

    static String say(ScrewCutting cutting, ScrewThread thread, CutPitch train) {
        if (cutting.dial().isEmpty() || !train.exact()) {
            return KEEP_CLOSED;
        }
        ScrewCutting.ChasingDial dial = cutting.dial().get();
        var chasing = new ChasingDial(cutting.leadscrew(), dial.teeth(), dial.marks());
        return switch (chasing.closing(thread.lead())) {
            case Closing.Anywhere anywhere -> "close the nut anywhere";
            case Closing.KeepClosed keep -> KEEP_CLOSED;
            case Closing.AtMarks(List<Integer> marks) -> at(marks.size(), dial.marks());
        };
    }

    /** The good marks lie evenly round the dial, since whatever brings the first one round brings the next. */
    private static String at(int good, int marks) {
        if (good == marks) {
            return "close the nut at any mark";
        }
        return good == 1
                ? "close the nut at one mark only, always the same"
                : "close the nut at every " + ordinal(marks / good) + " mark, counting from the first cut";
    }

    private static String ordinal(int number) {
        return switch (number) {
            case 2 -> "second";
            case 3 -> "third";
            default -> number + "th";
        };
    }
}
