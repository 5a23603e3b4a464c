package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Settings;
import chargehand.part.End;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether one operation on turned work can be done on a machine with the tool and the settings it names. */
final class OperationCheck {
    private final Kit kit;
    private final Machine machine;
    private final TurnedWork work;
    private final FaultList faults;

    OperationCheck(Kit kit, Machine machine, TurnedWork work, FaultList faults) {
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
                new ToolCheck(kit.tooling(), work, operation.settings().tool()).suits(cut),
                Fault.Code.NO_TOOL,
                () -> "'" + operation.settings().tool() + "' is not a tool of this shop that makes this cut");
        if (able) {
            new SettingsCheck(machine, operation, faults).check();
            passes(operation);
        }
    }

    private boolean isAble(Cut cut) {
        return switch (cut) {
            case Cut.SawOff saw -> machine instanceof Saw;
            case Cut.MillFlats flats -> machine instanceof Mill;
            case Cut.MillKeyway keyway -> machine instanceof Mill;
            case Cut.MillFace face -> machine instanceof Mill;
            case Cut.CutTeeth teeth -> machine instanceof Mill;
            case Cut.DrillCircle holes -> isDrillPress();
            case Cut.DrillAcross hole -> isDrillPress();
            case Cut.DrillHole hole -> isDrillPress();
            case Cut.ReamHole hole -> isDrillPress();
            case Cut.TapHole hole -> !(machine instanceof Saw);
            case Cut.Deburr deburr -> true;
            case Cut.FaceEnd face -> machine instanceof Lathe;
            case Cut.CentreHole centre -> machine instanceof Lathe;
            case Cut.DrillAxial drill -> machine instanceof Lathe;
            case Cut.BoreTo bore -> machine instanceof Lathe;
            case Cut.ReamTo ream -> machine instanceof Lathe;
            case Cut.ConeInside cone -> machine instanceof Lathe;
            case Cut.TurnDiameter turn -> machine instanceof Lathe;
            case Cut.TurnTaper taper -> machine instanceof Lathe;
            case Cut.CutGroove groove -> machine instanceof Lathe;
            case Cut.FinishEdge edge -> machine instanceof Lathe;
            case Cut.PartOff part -> machine instanceof Lathe;
            case Cut.SlotInBore slot -> machine instanceof Lathe;
            case Cut.RecessInBore recess -> machine instanceof Lathe;
            case Cut.ThreadOutside thread -> machine instanceof Lathe;
            case Cut.ThreadInside thread -> machine instanceof Lathe;
        };
    }

    private boolean isDrillPress() {
        return machine instanceof RadialDrill || machine instanceof Mill;
    }

    private void passes(Operation operation) {
        if (machine instanceof Lathe lathe) {
            onLathe(lathe, operation);
        } else if (machine instanceof Mill mill && operation.cut() instanceof Cut.CutTeeth teeth) {
            Span.between(teeth.from(), teeth.to())
                    .map(span -> PassCheck.acrossTable(mill, work.largest(span), teeth.root()))
                    .ifPresent(check -> run(check, operation));
        } else if (machine instanceof Mill mill && operation.cut() instanceof Cut.MillFlats flats) {
            Span.between(flats.from(), flats.to())
                    .map(span -> PassCheck.onTable(mill, 2, work.largest(span), flats.flats()))
                    .ifPresent(check -> run(check, operation));
        }
    }

    private void onLathe(Lathe lathe, Operation operation) {
        Cut cut = operation.cut();
        if (cut instanceof Cut.TurnDiameter turn) {
            touched(lathe, turn.from(), turn.to(), turn.diameter()).ifPresent(check -> run(check, operation));
        }
        if (cut instanceof Cut.CutGroove groove) {
            Span.between(groove.from(), groove.to())
                    .ifPresent(span -> groove(
                            lathe, span, groove.diameter(), operation.settings().passes()));
        }
        if (cut instanceof Cut.BoreTo bore) {
            Length pilot = new Hollow(work, bore.end()).pilot(bore.to(), bore.diameter());
            run(PassCheck.onCrossSlide(lathe, pilot, bore.diameter()), operation);
        }
        inWall(lathe, operation);
        if (cut instanceof Cut.ThreadOutside thread && thread.way() == Cut.ThreadWay.SCREW_CUT) {
            ScrewThread screw = thread.thread();
            run(PassCheck.onCrossSlide(lathe, screw.major(), screw.core()), operation);
        }
    }

    /** A flat bit touches a bore at its corners first; a round one, and a grooving tool, on the wall. */
    private void inWall(Lathe lathe, Operation operation) {
        if (operation.cut() instanceof Cut.SlotInBore slot) {
            double half =
                    slot.form() == Cut.SlotForm.SQUARE ? slot.width().half().mm() : 0;
            double radius = slot.bore().half().mm();
            Length touched = Length.mm(radius + Math.sqrt(Math.max(0, radius * radius - half * half)));
            run(PassCheck.fromTheWallOpposite(lathe, touched, slot.bore().plus(slot.depth())), operation);
        }
        if (operation.cut() instanceof Cut.RecessInBore recess) {
            Length hole = new Hollow(work, recess.end()).least(recess.end() == End.A ? recess.to() : recess.from());
            run(PassCheck.onCrossSlide(lathe, hole, recess.diameter()).howeverDeep(), operation);
        }
    }

    /** The tool is touched on the largest diameter it will meet, clear of the radii in hollow corners that are there. */
    private Optional<PassCheck> touched(Lathe lathe, Length from, Length to, Length finish) {
        return Span.between(from, to)
                .map(span -> Shoulders.clear(work.outer(), span))
                .map(span -> PassCheck.onCrossSlide(lathe, work.largest(span), finish));
    }

    /** A groove is counted from its own ground, or from a neighbour beside it that the tool was touched on. */
    private void groove(Lathe lathe, Span span, Length bottom, List<Settings.Pass> passes) {
        List<PassCheck> checks = Stream.of(work.largest(span), beside(span, End.A), beside(span, End.B))
                .filter(ground -> ground.isMoreThan(bottom))
                .map(ground -> PassCheck.onCrossSlide(lathe, ground, bottom).howeverDeep())
                .toList();
        checks.stream()
                .filter(check -> check.agrees(passes))
                .findFirst()
                .or(() -> checks.stream().findFirst())
                .ifPresent(check -> check.check(machine, passes, faults));
    }

    private Length beside(Span span, End end) {
        Length at = span.border(end);
        if (at.equals(work.face(end)) || !work.span().holds(span, Length.ZERO)) {
            return Length.ZERO;
        }
        Length radius =
                end == End.A ? work.outer().radiusBefore(at) : work.outer().radiusAfter(at);
        return radius.times(2);
    }

    private void run(PassCheck check, Operation operation) {
        check.check(machine, operation.settings().passes(), faults);
    }
}
