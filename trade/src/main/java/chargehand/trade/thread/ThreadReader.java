package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads any designation by trying each notation in turn; no text fits two of them. */
final class ThreadReader {
    static final String WOULD_DO =
            "write a thread as M12, M12x1.25, 1/2-13 UNC, #10-32, 1/2 BSW, 3/8 BSF, G 3/8, R 3/8, 2 BA, Tr 30x6 LH,"
                    + " Tr 40x14 (P7) or 1/2-10 Acme.";

    private static final int SAID_BACK = 40;
    private static final List<Function<String, Optional<ScrewThread>>> NOTATIONS = List.of(
            MetricNotation::find,
            TrapezoidalNotation::find,
            PipeNotation::find,
            BritishAssociationNotation::find,
            InchNotation::find);

    private ThreadReader() {}

    static ScrewThread read(String typed) {
        WrittenThread written = WrittenThread.of(typed);
        for (Function<String, Optional<ScrewThread>> notation : NOTATIONS) {
            Optional<ScrewThread> thread = notation.apply(written.body());
            if (thread.isPresent()) {
                return finished(thread.get(), written);
            }
        }
        throw new Unreadable("'" + shortened(written.typed()) + "' does not name a thread: " + WOULD_DO);
    }

    private static ScrewThread finished(ScrewThread thread, WrittenThread written) {
        if (written.starts() > 1 && thread.starts() > 1 && written.starts() != thread.starts()) {
            throw new Unreadable(
                    "the lead and pitch make " + thread.starts() + " starts, not " + written.starts() + ".");
        }
        int starts = Math.max(written.starts(), thread.starts());
        return thread.withStarts(starts).withLeftHand(written.leftHand());
    }

    private static String shortened(String typed) {
        return typed.length() <= SAID_BACK ? typed : typed.substring(0, SAID_BACK) + "…";
    }
}
