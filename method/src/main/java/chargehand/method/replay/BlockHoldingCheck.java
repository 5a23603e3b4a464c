package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Bench;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.Vice;
import chargehand.method.plan.Holding;
import java.util.List;

/** Whether a block can be held as a set-up says, on the machine it names. */
final class BlockHoldingCheck {
    private final Machine machine;
    private final BlockWork work;
    private final FaultList faults;

    BlockHoldingCheck(Machine machine, BlockWork work, FaultList faults) {
        this.machine = machine;
        this.work = work;
        this.faults = faults;
    }

    void check(Holding holding) {
        if (holding instanceof Holding.InVice held) {
            inVice(held);
        } else {
            faults.unless(
                    holding instanceof Holding.Clamped && machine instanceof Saw,
                    Fault.Code.NO_HOLDER,
                    () -> "a block is held in a vice, or clamped in the saw");
        }
    }

    private void inVice(Holding.InVice held) {
        Length across = work.over(held.fixed());
        faults.unless(
                vices().stream()
                        .anyMatch(vice -> vice.name().equals(held.vice()) && !across.isMoreThan(vice.opening())),
                Fault.Code.NO_HOLDER,
                () -> "the " + machine.name() + " has no " + held.vice() + " that opens to " + faults.size(across));
        faults.unless(
                held.fixed() != held.down() && held.fixed() != held.down().opposite(),
                Fault.Code.WRONG_SIDE,
                () -> "one face lies against the fixed jaw, another one down");
    }

    private List<Vice> vices() {
        return switch (machine) {
            case Mill mill -> mill.vices();
            case RadialDrill drill -> drill.vices();
            case Bench bench -> bench.vices();
            case Lathe lathe -> List.of();
            case Saw saw -> List.of();
        };
    }
}
