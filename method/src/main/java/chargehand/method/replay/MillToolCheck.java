package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Tooling;
import java.util.Optional;

/** Whether the tool that an operation names is an owned milling cutter that makes such a cut. */
final class MillToolCheck {
    private final Tooling tooling;
    private final String named;

    MillToolCheck(Tooling tooling, String named) {
        this.tooling = tooling;
        this.named = named;
    }

    /** For faces and flats. */
    boolean isMill() {
        return cutter().isPresent();
    }

    /** For a slot of this width. */
    boolean isMillFor(Length width) {
        return cutter().filter(cutter -> !cutter.diameter().isMoreThan(width)).isPresent();
    }

    private Optional<MillCutter> cutter() {
        return tooling.millCutters().stream()
                .filter(cutter -> cutter.name().equals(named) && !(cutter instanceof MillCutter.SlittingSaw))
                .findFirst();
    }
}
