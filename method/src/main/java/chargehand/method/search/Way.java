package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.plan.SetUp;
import chargehand.method.setting.Job;
import chargehand.method.work.Standing;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A way from raw work to a standing.
 *
 * @param work as it stands then
 * @param steps that lead there
 * @param met the numbers of the wishes for a grip that have come true on the way
 * @param seconds they take
 * @param bound what the whole will take at the least
 */
record Way(Standing work, List<Step> steps, BitSet met, double seconds, double bound) {
    Way {
        steps = List.copyOf(steps);
    }

    /** One set-up of a way: what it was to do, on what, and how it is written down. */
    record Step(Job job, SetUp setUp) {}

    /** Nothing done yet. */
    static Way raw(Standing work, double bound) {
        return new Way(work, List.of(), new BitSet(), 0, bound);
    }

    List<SetUp> setUps() {
        return steps.stream().map(Step::setUp).toList();
    }

    /** What is on the machine now; empty at the beginning. */
    Optional<Choice> last() {
        return steps.isEmpty()
                ? Optional.empty()
                : Optional.of(steps.getLast().job().choice());
    }

    /** The way with one more step. */
    Way with(Step step, Standing then, BitSet alsoMet, double allSeconds, double allBound) {
        var all = new ArrayList<>(steps);
        all.add(step);
        return new Way(then, all, alsoMet, allSeconds, allBound);
    }

    /** Two ways with the same key have the same future: the same work, and the same set-up still on the machine. */
    String key() {
        return key(work, met, last().map(Changeover::holder).orElse(""));
    }

    static String key(Standing work, BitSet met, String holder) {
        return work.key() + (met.isEmpty() ? "" : met.toString()) + holder;
    }
}
