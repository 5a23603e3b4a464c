package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Tooling;
import chargehand.method.plan.Cut;
import chargehand.trade.thread.ScrewThread;
import java.util.function.Function;
import java.util.function.Predicate;

/** Whether the tool that an operation names is an owned one that makes a hole of such a size. */
final class HoleToolCheck {
    /** How near the angle of a tool must be to the form it cuts (degrees). */
    static final double FORM_NEAR = 0.5;

    private final HoleTools tools;
    private final String named;

    HoleToolCheck(Tooling tooling, String named) {
        this.tools = tooling.holeTools();
        this.named = named;
    }

    boolean isCentreDrill(Length mouth) {
        return tools.centreDrills().stream()
                .filter(isNamed("centre drill ", HoleTools.CentreDrill::designation))
                .anyMatch(drill -> !mouth.isMoreThan(drill.body()));
    }

    boolean isDrill(Length diameter) {
        return tools.drills().stream()
                .filter(drill -> named.equals("drill " + drill.designation()))
                .anyMatch(drill -> drill.diameter().isWithin(Believable.DRILL_NEAR, diameter));
    }

    /** A reamer is known by its size, however it is written. */
    boolean isReamer(Length diameter) {
        return named.startsWith("reamer ")
                && tools.reamers().stream().anyMatch(reamer -> reamer.diameter().isWithin(Deviation.ALLOWED, diameter));
    }

    boolean isTap(ScrewThread thread) {
        return named.equals("tap " + thread.designation())
                && tools.findTap(thread.designation()).isPresent();
    }

    boolean isCountersink() {
        return named.startsWith("countersink");
    }

    boolean isCountersink(Cut.ConeInside cone) {
        return isCountersink()
                && tools.countersinks().stream()
                        .anyMatch(tool -> !tool.largest().isLessThan(cone.mouth())
                                && Math.abs(tool.angle().degrees()
                                                - cone.included().degrees())
                                        <= FORM_NEAR);
    }

    private <T> Predicate<T> isNamed(String kind, Function<T, String> designation) {
        return tool -> named.equals(kind + designation.apply(tool));
    }
}
