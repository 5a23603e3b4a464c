package chargehand.method.search;

import chargehand.measure.WorkTime;
import chargehand.method.holding.Choice;
import chargehand.method.holding.NotHeld;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.plan.NotTaken;
import chargehand.method.search.TurnedPlanner.Found;
import chargehand.method.wish.HolderName;
import chargehand.method.wish.Names;
import chargehand.method.work.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Says of every set-up of a method why it is not held otherwise: each machine of the same kind, and each thing that holds work
 * on it, is put in its place and the rest planned again around it.
 */
final class WhyNot {
    /** How many set-ups are weighed for each thing not taken. */
    private static final long MOST_WEIGHED = 800;

    private final TurnedPlanner planner;
    private final Kit kit;
    private final Found found;

    WhyNot(TurnedPlanner planner, Kit kit, Found found) {
        this.planner = planner;
        this.kit = kit;
        this.found = found;
    }

    /** In the order of the set-ups and of the kit. */
    List<NotTaken> list(Names names, Effort effort) {
        var list = new ArrayList<NotTaken>();
        for (int step = 0; step < found.way().steps().size(); step++) {
            Choice taken = found.way().steps().get(step).job().choice();
            for (Machine machine : kit.machines()) {
                if (machine.getClass() == taken.machine().getClass()) {
                    for (String holder : names.holdersOn(machine.name())) {
                        if (!isIn(taken, machine, holder)) {
                            list.add(notTaken(step, machine, holder, effort));
                        }
                    }
                }
            }
        }
        return list;
    }

    private static boolean isIn(Choice choice, Machine machine, String holder) {
        return choice.machine().name().equals(machine.name())
                && HolderName.of(choice.holding()).equals(holder);
    }

    private NotTaken notTaken(int step, Machine machine, String holder, Effort effort) {
        int number = found.begun().sawing().size() + step + 1;
        return new NotTaken(number, machine.name(), holder, verdict(step, machine, holder, effort));
    }

    private NotTaken.Verdict verdict(int step, Machine machine, String holder, Effort effort) {
        Standing work = found.way().steps().get(step).job().work();
        Predicate<Choice> here = choice -> isIn(choice, machine, holder);
        if (planner.holdings(found.begun()).list(work).stream().noneMatch(here)) {
            return new NotTaken.NotPossible(NotHeld.why(machine, holder, work));
        }
        var patience = new Patience(MOST_WEIGHED);
        var limited = new Effort(effort.pieces(), effort.thorough(), patience, effort.bidden());
        SetUpSearch search = planner.search(found.begun(), limited);
        SetUpSearch.Ended ended = search.quickest(begun(step), here, Double.MAX_VALUE);
        if (ended.way().isPresent()) {
            return longer(
                    ended.way().get().seconds(),
                    !patience.isLeft() && ended.least() < ended.way().get().seconds());
        }
        return patience.isLeft()
                ? new NotTaken.LeadsNowhere(
                        "It holds the work, but leaves nothing clear that is still to be made, or makes"
                                + " what comes after impossible to hold true.")
                : longer(ended.least(), true);
    }

    private NotTaken.Verdict longer(double seconds, boolean atLeast) {
        double by = Math.max(0, seconds - found.way().seconds());
        return new NotTaken.Longer(WorkTime.seconds(by), atLeast);
    }

    /** The way as it was before a step. */
    private Way begun(int step) {
        Way way = found.way();
        Way before = Way.raw(way.steps().getFirst().job().work(), 0);
        for (Way.Step each : way.steps().subList(0, step)) {
            Standing then = SetUpSearch.work(each.job());
            var met = planner.met(each.job());
            met.or(before.met());
            double seconds =
                    before.seconds() + each.setUp().time(found.begun().count()).seconds();
            before = before.with(each, then, met, seconds, seconds);
        }
        return before;
    }
}
