package chargehand.method.setting;

import chargehand.method.kit.ScrewCutting;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.wheels.CutPitch;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * At which marks of the chasing dial the half-nut may be closed again. The dial goes round once while the nut passes as many
 * leadscrew threads as its wheel has teeth; the nut may close wherever the threads passed since the first cut make a whole
 * number of leads of the work.
 */
final class DialMarks {
    private DialMarks() {}

    static String say(ScrewCutting cutting, ScrewThread thread, CutPitch train) {
        if (cutting.dial().isEmpty() || !train.exact()) {
            return "keep the nut closed and reverse the lathe";
        }
        ScrewCutting.ChasingDial dial = cutting.dial().get();
        BigFraction leadsForThread =
                cutting.leadscrew().mm().divide(thread.lead().mm());
        BigInteger threads = leadsForThread.getDenominator();
        BigInteger teeth = BigInteger.valueOf(dial.teeth());
        BigInteger step = teeth.gcd(threads);
        if (threads.equals(BigInteger.ONE)) {
            return "close the nut anywhere";
        }
        if (!step.equals(threads)) {
            return "keep the nut closed and reverse the lathe";
        }
        return marks(dial, threads.intValueExact());
    }

    /** With {@code every} leadscrew threads between good places, the marks that fall on them, counting from any one. */
    private static String marks(ScrewCutting.ChasingDial dial, int every) {
        int teethPerMark = dial.teeth() / dial.marks();
        if (teethPerMark % every == 0) {
            return "close the nut at any mark";
        }
        for (int skip = 2; skip <= dial.marks(); skip++) {
            if (dial.marks() % skip == 0 && (teethPerMark * skip) % every == 0) {
                return skip == dial.marks()
                        ? "close the nut at one mark only, always the same"
                        : "close the nut at every " + ordinal(skip) + " mark, counting from the first cut";
            }
        }
        return "keep the nut closed and reverse the lathe";
    }

    private static String ordinal(int number) {
        return switch (number) {
            case 2 -> "second";
            case 3 -> "third";
            default -> number + "th";
        };
    }
}
