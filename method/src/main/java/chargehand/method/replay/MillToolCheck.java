package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Tooling;
import chargehand.method.plan.Cut;
import java.util.List;
import java.util.Optional;

/** Whether the tool that an operation names is an owned milling cutter that makes such a cut. */
final class MillToolCheck {
    /** How near a cutter's module must be to that of the wheel. */
    private static final double MODULE_NEAR = 0.005;

    /** The fewest teeth that each number of the set of eight cuts, from number 1 (from memory, Brown & Sharpe). */
    private static final List<Integer> FEWEST = List.of(135, 55, 35, 26, 21, 17, 14, 12);

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

    /** For spaces of this pitch and so many teeth round; each number of the set of eight serves from so many teeth up. */
    boolean isGearCutterFor(Cut.CutTeeth cut) {
        double module = cut.pitchDiameter().mm() / cut.teeth();
        return tooling.millCutters(MillCutter.GearCutter.class).stream()
                .filter(cutter -> cutter.name().equals(named))
                .anyMatch(cutter -> Math.abs(cutter.module() - module) <= MODULE_NEAR
                        && cut.teeth() >= FEWEST.get(cutter.number() - 1)
                        && (cutter.number() == 1 || cut.teeth() < FEWEST.get(cutter.number() - 2)));
    }

    private static boolean isForFaces(MillCutter cutter) {
        return switch (cutter) {
            case MillCutter.EndMill mill -> true;
            case MillCutter.SlotDrill drill -> true;
            case MillCutter.FaceMill mill -> true;
            case MillCutter.SlittingSaw saw -> false;
            case MillCutter.GearCutter form -> false;
        };
    }

    private Optional<MillCutter> cutter() {
        return tooling.millCutters().stream()
                .filter(cutter -> cutter.name().equals(named) && isForFaces(cutter))
                .findFirst();
    }
}
