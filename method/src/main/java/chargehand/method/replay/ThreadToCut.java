package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.trade.thread.ScrewThread;
import java.util.Optional;

/** A thread that is to be screw-cut, and how long it is. */
record ThreadToCut(ScrewThread thread, Length length) {
    /** Nothing for a cut that needs no gearing. */
    static Optional<ThreadToCut> screwCut(Cut cut) {
        if (cut instanceof Cut.ThreadOutside outside && outside.way() == Cut.ThreadWay.SCREW_CUT) {
            return Optional.of(new ThreadToCut(
                    outside.thread(), outside.to().minus(outside.from()).abs()));
        }
        if (cut instanceof Cut.ThreadInside inside && inside.way() == Cut.ThreadWay.SCREW_CUT) {
            return Optional.of(new ThreadToCut(inside.thread(), inside.to().abs()));
        }
        return Optional.empty();
    }
}
