package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding.Face;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.part.Body;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Carries a method for a block out on its slab. */
final class BlockReplay {
    private final Body.Block wanted;
    private final Method method;
    private final Kit kit;
    private final FaultList faults;
    private BlockWork work;

    private BlockReplay(Body.Block wanted, Method method, Kit kit, Start start) {
        this.wanted = wanted;
        this.method = method;
        this.kit = kit;
        this.faults = start.faults();
        this.work = start.raw();
    }

    private record Start(BlockWork raw, FaultList faults) {}

    static Proof of(Body.Block body, Method method, Kit kit, FaultList faults) {
        if (method.stock().blank() instanceof Blank.Slab slab) {
            var raw = new BlockWork(slab.length(), slab.width(), slab.thickness(), Set.of(), List.of());
            return new BlockReplay(body, method, kit, new Start(raw, faults)).run();
        }
        faults.add(Fault.Code.STOCK_TOO_SMALL, "a block is made from flat or plate");
        return new Proof(false, body.length().length(), faults.list(), List.of(), List.of());
    }

    private Proof run() {
        BlockWork raw = work;
        start();
        var stages = new ArrayList<Proof.Stage>();
        for (SetUp setUp : method.setUps()) {
            faults.at(setUp.number(), 0);
            faults.unless(
                    setUp.number() == stages.size() + 1,
                    Fault.Code.OUT_OF_ORDER,
                    () -> "set-ups count from 1, in order");
            stages.add(stage(setUp));
        }
        faults.at(0, 0);
        Length worst = new BlockEnd(wanted, faults).check(raw, work);
        return new Proof(faults.list().isEmpty(), worst, faults.list(), stages, List.of());
    }

    private void start() {
        for (Face face : Face.values()) {
            faults.unless(
                    !work.over(face).isLessThan(size(face)),
                    Fault.Code.STOCK_TOO_SMALL,
                    () -> "the block does not come out of the slab");
        }
        faults.unless(Sawing.isFirst(method), Fault.Code.NOT_CUT_OFF, () -> "a slab is sawn off first");
    }

    private Length size(Face face) {
        return BlockEnd.size(wanted, face);
    }

    private Proof.Stage stage(SetUp setUp) {
        BlockWork before = work;
        Optional<Machine> machine = kit.find(setUp.machine());
        if (machine.isEmpty()) {
            faults.add(Fault.Code.NO_MACHINE, "there is no machine called '" + setUp.machine() + "'");
        }
        machine.ifPresent(each -> new BlockHoldingCheck(each, work, faults).check(setUp.holding()));
        var steps = new ArrayList<Proof.Step>();
        for (Operation operation : setUp.operations()) {
            faults.at(setUp.number(), operation.number());
            faults.unless(
                    operation.number() == steps.size() + 1,
                    Fault.Code.OUT_OF_ORDER,
                    () -> "operations count from 1, in order");
            steps.add(step(setUp, operation, machine));
        }
        faults.at(setUp.number(), 0);
        burrs(setUp);
        return new Proof.Stage(setUp.number(), before, steps);
    }

    private Proof.Step step(SetUp setUp, Operation operation, Optional<Machine> machine) {
        BlockWork before = work;
        machine.ifPresent(each -> new BlockOperationCheck(kit, each, before, faults).check(operation));
        faults.unless(
                !(operation.cut() instanceof Cut.SawOff) || Sawing.isOfBlank(operation, setUp),
                Fault.Code.MADE_TWICE,
                () -> "the slab is sawn off already");
        work = new BlockCutting(wanted, before, setUp.holding(), faults).after(operation.cut());
        return new Proof.Step(operation.number(), before, work);
    }

    private void burrs(SetUp setUp) {
        List<Cut> cuts = setUp.operations().stream().map(Operation::cut).toList();
        faults.unless(
                cuts.isEmpty() || cuts.getLast() instanceof Cut.Deburr || cuts.getLast() instanceof Cut.SawOff,
                Fault.Code.BURRS_LEFT,
                () -> "burrs are taken off before the work leaves the holding");
    }
}
