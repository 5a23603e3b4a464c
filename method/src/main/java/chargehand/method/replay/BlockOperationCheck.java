package chargehand.method.replay;

import chargehand.method.kit.Bench;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;

/** Whether one operation on a block can be done on a machine with the tool and the settings it names. */
final class BlockOperationCheck {
    private final Kit kit;
    private final Machine machine;
    private final BlockWork work;
    private final FaultList faults;

    BlockOperationCheck(Kit kit, Machine machine, BlockWork work, FaultList faults) {
        this.kit = kit;
        this.machine = machine;
        this.work = work;
        this.faults = faults;
    }

    void check(Operation operation) {
        Cut cut = operation.cut();
        boolean able = faults.unless(
                isAble(cut), Fault.Code.NO_MACHINE, () -> "the " + machine.name() + " does not make such a cut");
        faults.unless(
                hasTool(cut, operation.settings().tool()),
                Fault.Code.NO_TOOL,
                () -> "'" + operation.settings().tool() + "' is not a tool of this shop that makes this cut");
        if (able) {
            new SettingsCheck(machine, operation, faults).check();
        }
        if (machine instanceof Mill mill && cut instanceof Cut.MillFace face) {
            PassCheck.onTable(mill, 1, work.over(face.face()), face.to())
                    .check(machine, operation.settings().passes(), faults);
        }
    }

    private boolean isAble(Cut cut) {
        return switch (machine) {
            case Saw saw -> cut instanceof Cut.SawOff;
            case Mill mill -> !(cut instanceof Cut.SawOff);
            case RadialDrill drill -> !(cut instanceof Cut.SawOff) && !(cut instanceof Cut.MillFace);
            case Bench bench -> cut instanceof Cut.TapHole || cut instanceof Cut.Deburr;
            case Lathe lathe -> false;
        };
    }

    private boolean hasTool(Cut cut, String named) {
        var holes = new HoleToolCheck(kit.tooling(), named);
        return !(cut instanceof Cut.MillFace
                        || cut instanceof Cut.DrillHole
                        || cut instanceof Cut.ReamHole
                        || cut instanceof Cut.TapHole)
                || (cut instanceof Cut.MillFace && new MillToolCheck(kit.tooling(), named).isMill())
                || (cut instanceof Cut.DrillHole drill && holes.isDrill(drill.diameter()))
                || (cut instanceof Cut.ReamHole ream && holes.isReamer(ream.diameter()))
                || (cut instanceof Cut.TapHole tap && holes.isTap(tap.thread()));
    }
}
