package chargehand.method.start;

import chargehand.method.plan.Cut;
import java.util.Optional;

/** What a cut asks of the machine beyond its settings. */
final class Operated {
    private Operated() {}

    /** Whether the leadscrew drives the tool. */
    static boolean isScrewCut(Cut cut) {
        return way(cut).filter(way -> way == Cut.ThreadWay.SCREW_CUT).isPresent();
    }

    /** Whether a hand turns the tool in the machine. */
    static boolean isByHand(Cut cut) {
        return way(cut).filter(way -> way == Cut.ThreadWay.TAP_BY_HAND).isPresent();
    }

    private static Optional<Cut.ThreadWay> way(Cut cut) {
        if (cut instanceof Cut.ThreadOutside outside) {
            return Optional.of(outside.way());
        }
        return cut instanceof Cut.ThreadInside inside ? Optional.of(inside.way()) : Optional.empty();
    }
}
