package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.plan.Settings;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Whether the passes of one cut lead from the surface as it is to the size, each dial reading taking off what its pass
 * says it leaves.
 *
 * @param start the size the tool is touched on
 * @param finish the size the cut is to leave
 * @param graduation what one division of the dial changes the size by
 * @param off what the size changes by for a dial reading
 * @param heaviest the most that one pass may change the size by
 */
record PassCheck(Length start, Length finish, Length graduation, UnaryOperator<Length> off, Length heaviest) {
    /** On the cross slide of a lathe. */
    static PassCheck onCrossSlide(Lathe lathe, Length start, Length finish) {
        return new PassCheck(
                start, finish, lathe.leastOffDiameter(), lathe.slides()::offDiameter, Believable.DEEPEST_CUT.times(2));
    }

    /** On the cross slide of a lathe, for a slot in a bore, which is measured from the wall over against it. */
    static PassCheck fromTheWallOpposite(Lathe lathe, Length start, Length finish) {
        return new PassCheck(
                        start,
                        finish,
                        lathe.leastOffDiameter().half(),
                        reading -> lathe.slides().offDiameter(reading).half(),
                        Believable.DEEPEST_CUT)
                .howeverDeep();
    }

    /** On the height of a mill's table, which changes a size over one face by the reading, over two by twice as much. */
    static PassCheck onTable(Mill mill, int faces, Length start, Length finish) {
        Length graduation = mill.dials().up().graduation().times(faces);
        return new PassCheck(
                start, finish, graduation, reading -> reading.times(faces), Believable.DEEPEST_MILLED.times(faces));
    }

    /** On the cross dial of a mill's table, for spaces cut evenly all round: a reading changes the diameter by twice as much. */
    static PassCheck acrossTable(Mill mill, Length start, Length finish) {
        Length graduation = mill.dials().across().graduation().times(2);
        return new PassCheck(
                start, finish, graduation, reading -> reading.times(2), Believable.DEEPEST_MILLED.times(2));
    }

    /** Grooves are cut straight in, as deep as need be. */
    PassCheck howeverDeep() {
        return new PassCheck(
                start, finish, graduation, off, start.minus(finish).abs().plus(graduation));
    }

    void check(Machine machine, List<Settings.Pass> passes, FaultList faults) {
        if (passes.isEmpty()) {
            faults.unless(
                    !start.minus(finish).abs().isMoreThan(heaviest),
                    Fault.Code.WRONG_PASSES,
                    () -> "too much comes off for one cut, and no passes are given");
            return;
        }
        faults.unless(
                passes.getLast().leaves().isWithin(Deviation.ALLOWED, finish),
                Fault.Code.WRONG_PASSES,
                () -> "the last pass leaves " + faults.size(passes.getLast().leaves()) + ", not "
                        + faults.size(finish));
        Length before = start;
        Length dial = Length.ZERO;
        for (Settings.Pass pass : passes) {
            step(before, dial, pass, faults);
            reading(machine, pass, faults);
            before = pass.leaves();
            dial = pass.dial();
        }
    }

    private boolean isInward() {
        return finish.isLessThan(start);
    }

    /** Each pass goes on from the one before, no further than the size, and no deeper at once than a tool stands. */
    private void step(Length before, Length dial, Settings.Pass pass, FaultList faults) {
        Length more = isInward() ? before.minus(pass.leaves()) : pass.leaves().minus(before);
        Length left = isInward() ? pass.leaves().minus(finish) : finish.minus(pass.leaves());
        faults.unless(
                more.isPositive()
                        && pass.dial().isMoreThan(dial)
                        && !left.isLessThan(Deviation.ALLOWED.negated())
                        && !more.isMoreThan(heaviest),
                Fault.Code.WRONG_PASSES,
                () -> "pass " + pass.number() + " does not go on from the one before, or goes too deep");
    }

    /** Whether every dial reading takes off what its pass says. */
    boolean agrees(List<Settings.Pass> passes) {
        return passes.stream().allMatch(pass -> left(pass).isWithin(graduation, pass.leaves()));
    }

    private Length left(Settings.Pass pass) {
        Length change = off.apply(pass.dial());
        return isInward() ? start.minus(change) : start.plus(change);
    }

    private void reading(Machine machine, Settings.Pass pass, FaultList faults) {
        Length leaves = left(pass);
        faults.unless(
                leaves.isWithin(graduation, pass.leaves()),
                Fault.Code.WRONG_DIAL,
                () -> "with the dial of the " + machine.name() + " as given, pass " + pass.number() + " leaves "
                        + faults.size(leaves) + " from " + faults.size(start) + ", not " + faults.size(pass.leaves()));
    }
}
