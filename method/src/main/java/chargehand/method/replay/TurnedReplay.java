package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.part.Body;
import chargehand.part.OnEnd;
import chargehand.part.Stays;
import chargehand.part.Tie;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Carries a method for a turned part out on its blank. */
final class TurnedReplay {
    private final Asked asked;
    private final Method method;
    private final Kit kit;
    private final Solid wanted;
    private final FaultList faults;
    private final FinishCheck finish;
    private TurnedWork work;
    private boolean loose;

    private TurnedReplay(Asked asked, Method method, Kit kit, Start start) {
        this.asked = asked;
        this.method = method;
        this.kit = kit;
        this.wanted = Solid.of(asked.body());
        this.faults = start.faults();
        this.finish = new FinishCheck(wanted, faults);
        this.work = start.raw();
    }

    /** What the drawing asks for. */
    record Asked(Body.Turned body, List<Tie> ties) {}

    private record Start(TurnedWork raw, FaultList faults) {}

    static Proof of(Asked asked, Method method, Kit kit, FaultList faults) {
        Optional<TurnedWork> raw = switch (method.stock().blank()) {
            case Blank.RoundBar bar -> Optional.of(TurnedWork.of(bar));
            case Blank.PolygonBar bar -> Optional.of(TurnedWork.of(bar));
            case Blank.OldPart old -> AsItCame.work(asked.body(), old);
            case Blank.Slab slab -> Optional.empty();
        };
        return raw.map(work -> new TurnedReplay(asked, method, kit, new Start(work, faults)).run())
                .orElseGet(() -> {
                    faults.add(
                            Fault.Code.STOCK_TOO_SMALL,
                            "a turned part is made from bar, or from the old part that its drawing shows");
                    return new Proof(false, asked.body().length(), faults.list(), List.of(), List.of());
                });
    }

    private Proof run() {
        faults.unless(
                finish.holdsPart(work), Fault.Code.STOCK_TOO_SMALL, () -> "the part does not come out of the blank");
        oldPart();
        cutOff();
        var stages = new ArrayList<Proof.Stage>();
        for (SetUp setUp : method.setUps()) {
            faults.at(setUp.number(), 0);
            faults.unless(
                    setUp.number() == stages.size() + 1,
                    Fault.Code.OUT_OF_ORDER,
                    () -> "set-ups count from 1, in order");
            stages.add(stage(setUp));
        }
        new TieCheck(asked.body(), method, stages, faults).check(asked.ties());
        faults.at(0, 0);
        new NeverCut(asked.body(), faults).check();
        new MilledEnd(asked.body(), work.features(), faults).check();
        var end = new FinalCheck(wanted, work, faults);
        Length worst = end.check();
        new SlotsCheck(asked.body()).check(work.features().slots(), faults);
        centresThatMustNotStay(end.remains());
        return new Proof(faults.list().isEmpty(), worst, faults.list(), stages, end.remains());
    }

    private void centresThatMustNotStay(List<Features.CentreHole> remains) {
        asked.body().onEnds().stream()
                .filter(feature -> feature instanceof OnEnd.Centre centre && centre.stays() == Stays.MUST_NOT)
                .forEach(feature -> faults.unless(
                        remains.stream().noneMatch(centre -> centre.end() == feature.end()),
                        Fault.Code.NOT_AS_DRAWN,
                        () -> "a centre hole stays in end " + feature.end() + ", where none may"));
    }

    private void oldPart() {
        faults.unless(
                asked.body().isAltered() == isOld(),
                Fault.Code.NOT_AS_DRAWN,
                () -> "the part comes back to be altered, and the method begins from a piece of stock");
    }

    private boolean isOld() {
        return method.stock().blank() instanceof Blank.OldPart;
    }

    /** Work that does not stay on its bar is sawn off before anything else; nothing is sawn off an old part. */
    private void cutOff() {
        boolean sawn = !work.onBar() && !isOld();
        faults.unless(
                sawn == Sawing.isFirst(method),
                Fault.Code.NOT_CUT_OFF,
                () -> "a blank is sawn off first, or stays on its bar");
    }

    private Proof.Stage stage(SetUp setUp) {
        TurnedWork before = work;
        loose = false;
        Optional<Machine> machine = kit.find(setUp.machine());
        if (machine.isEmpty()) {
            faults.add(Fault.Code.NO_MACHINE, "there is no machine called '" + setUp.machine() + "'");
        }
        machine.ifPresent(each -> new HoldingCheck(kit, work, wanted, faults).check(each, setUp.holding()));
        var steps = new ArrayList<Proof.Step>();
        for (int i = 0; i < setUp.operations().size(); i++) {
            Operation operation = setUp.operations().get(i);
            faults.at(setUp.number(), operation.number());
            faults.unless(
                    operation.number() == i + 1, Fault.Code.OUT_OF_ORDER, () -> "operations count from 1, in order");
            var hollow = HollowCorners.formedBy(
                    setUp.operations().subList(i + 1, setUp.operations().size()), wanted.outer());
            steps.add(step(setUp, operation, machine, hollow));
        }
        faults.at(setUp.number(), 0);
        burrs(setUp);
        new WallCheck(held(setUp, before, steps), faults).check(setUp.holding());
        return new Proof.Stage(setUp.number(), before, steps);
    }

    /** The work as it is held when all is cut but the parting. */
    private static TurnedWork held(SetUp setUp, TurnedWork before, List<Proof.Step> steps) {
        TurnedWork held = before;
        for (int i = 0; i < steps.size(); i++) {
            if (!(setUp.operations().get(i).cut() instanceof Cut.PartOff)) {
                held = (TurnedWork) steps.get(i).after();
            }
        }
        return held;
    }

    private Proof.Step step(SetUp setUp, Operation operation, Optional<Machine> machine, HollowCorners hollow) {
        TurnedWork before = work;
        faults.unless(!loose, Fault.Code.WORK_LOOSE, () -> "the work has been parted off and is no longer held");
        machine.ifPresent(each -> new OperationCheck(kit, each, before, faults).check(operation));
        new CutCheck(before, setUp.holding(), wanted.length(), faults).check(operation.cut());
        new DepthGround(wanted, before, faults).check(operation.cut());
        work = new Cutting(before, hollow).after(operation.cut());
        faults.unless(
                operation.cut() instanceof Cut.Deburr || Sawing.isOfBlank(operation, setUp) || !work.equals(before),
                Fault.Code.NOTHING_TO_CUT,
                () -> "this takes nothing off the work");
        finish.check(before, work);
        new StiffnessCheck(work, setUp.holding(), faults).check(operation.cut());
        loose |= operation.cut() instanceof Cut.PartOff part
                && Access.of(setUp.holding()).facing().contains(part.partSide());
        return new Proof.Step(operation.number(), before, work);
    }

    /** After the last cut on a machine that leaves burrs, they are taken off; only parting comes after. */
    private void burrs(SetUp setUp) {
        List<Cut> cuts = setUp.operations().stream()
                .map(Operation::cut)
                .filter(cut -> !(cut instanceof Cut.PartOff) && !(cut instanceof Cut.SawOff))
                .toList();
        faults.unless(
                cuts.isEmpty() || cuts.getLast() instanceof Cut.Deburr,
                Fault.Code.BURRS_LEFT,
                () -> "burrs are taken off before the work leaves the holding");
    }
}
