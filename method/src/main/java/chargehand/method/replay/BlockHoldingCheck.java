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
import java.util.Optional;

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
        } else if (holding instanceof Holding.OnTable held) {
            onTable(held);
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

    /** Clamps stand on the face over against the table, so neither of the two can be an edge that stands out. */
    private void onTable(Holding.OnTable held) {
        faults.unless(
                clamps().filter(reach -> !work.over(held.down()).isMoreThan(reach))
                        .isPresent(),
                Fault.Code.NO_HOLDER,
                () -> "the clamps of the " + machine.name() + " do not reach over "
                        + faults.size(work.over(held.down())));
        faults.unless(
                !held.out().contains(held.down())
                        && !held.out().contains(held.down().opposite()),
                Fault.Code.WRONG_SIDE,
                () -> "a face that lies on the table or under the clamps does not stand out");
        faults.unless(
                isRoom(), Fault.Code.TOO_BIG, () -> "the block is larger than the " + machine.name() + " reaches over");
    }

    private boolean isRoom() {
        return switch (machine) {
            case Mill mill ->
                !work.length().isMoreThan(mill.travels().along())
                        && !work.width().isMoreThan(mill.travels().across());
            case RadialDrill drill ->
                !Length.least(work.length(), work.width())
                        .isMoreThan(drill.room().fromColumn());
            case Bench bench -> false;
            case Lathe lathe -> false;
            case Saw saw -> false;
        };
    }

    private Optional<Length> clamps() {
        return switch (machine) {
            case Mill mill -> mill.clamps();
            case RadialDrill drill -> drill.clamps();
            case Bench bench -> Optional.empty();
            case Lathe lathe -> Optional.empty();
            case Saw saw -> Optional.empty();
        };
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
