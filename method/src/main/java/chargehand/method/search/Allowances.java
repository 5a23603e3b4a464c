package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.setting.Making;
import chargehand.method.task.Bores;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * The sets of tasks a set-up may be allowed: everything but centre holes; those too where slender work or a run-out may want
 * them; everything but the bores where they could as well be made from the other end; everything but the parting.
 */
final class Allowances {
    private static final Predicate<Task> CENTRE = Task.CentreIn.class::isInstance;
    private static final Predicate<Task> INSIDE = Task.Inside.class::isInstance;
    private static final Predicate<Task> OFF = Task.OffTheBar.class::isInstance;

    /** Length over least diameter from which work may want a centre: less than any holding's own limit. */
    private static final double SLENDER = 3;

    private final boolean wantsCentres;

    private Allowances(boolean wantsCentres) {
        this.wantsCentres = wantsCentres;
    }

    /** Work needs centres when it is slender or when surfaces are tied to each other. */
    static Allowances of(Making making) {
        Length length = making.body().length();
        Length least = making.body().outside().stream()
                .filter(section -> !(section instanceof Section.Groove))
                .map(section -> Length.least(section.diameterTowardsA(), section.diameterTowardsB()))
                .min(Comparator.naturalOrder())
                .orElse(length);
        return new Allowances(!making.part().ties().isEmpty() || length.over(least) > SLENDER);
    }

    List<BitSet> of(Standing work) {
        var sets = new ArrayList<BitSet>();
        addWithout(work, CENTRE, sets);
        if (wantsCentres) {
            addWithout(work, task -> false, sets);
        }
        if (work.shape().body().inside().stream().anyMatch(Bores::isThrough)) {
            addWithout(work, CENTRE.or(INSIDE), sets);
        }
        if (work.isOnBar()) {
            addWithout(work, CENTRE.or(OFF), sets);
        }
        return sets;
    }

    private static void addWithout(Standing work, Predicate<Task> left, List<BitSet> sets) {
        var set = new BitSet(work.tasks().size());
        for (int i = 0; i < work.tasks().size(); i++) {
            set.set(i, !left.test(work.tasks().get(i)));
        }
        if (!sets.contains(set)) {
            sets.add(set);
        }
    }
}
