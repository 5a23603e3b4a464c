package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.holding.Holdings;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.plan.SetUp;
import chargehand.method.search.TurnedPlanner.Begun;
import chargehand.method.setting.Job;
import chargehand.method.setting.Making;
import chargehand.method.setting.SetUpWriter;
import chargehand.method.setting.ThreadWays;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Plans as somebody would who never looks ahead: the first stock on the list; on it the first machine, in the order of the
 * kit, on which anything can be done; there the holding that does most, with all it can do in the trade's order; and so on
 * until the part is made or nothing more can be done. It is what the search is measured against.
 */
final class FixedOrder {
    private static final int MOST_SET_UPS = 12;

    private final Kit kit;
    private final Making making;
    private final SetUpWriter writer;
    private final Holdings holdings;
    private final ThreadWays ways;

    FixedOrder(Kit kit, Part part, Body.Turned body, Begun begun) {
        this.kit = kit;
        this.making = new Making(part, body, begun.stock().material(), kit);
        this.ways = new ThreadWays(kit.tooling());
        this.writer = new SetUpWriter(making, ways);
        this.holdings = new Holdings(kit, body, begun.stock().material());
    }

    /** The set-ups, the sawing among them; empty where it gets stuck. */
    Optional<List<SetUp>> from(Begun begun) {
        var setUps = new ArrayList<>(begun.sawing());
        Standing work = begun.work();
        Optional<Choice> last = Optional.empty();
        while (!work.isFinished() && setUps.size() < MOST_SET_UPS) {
            Optional<Job> next = next(work, begun.count());
            if (next.isEmpty()) {
                return Optional.empty();
            }
            Job job = next.get();
            setUps.add(Changeover.after(last, job.choice(), writer.write(setUps.size() + 1, job)));
            last = Optional.of(job.choice());
            work = SetUpSearch.work(job);
        }
        return work.isFinished() ? Optional.of(setUps) : Optional.empty();
    }

    private Optional<Job> next(Standing work, int count) {
        List<Choice> choices = holdings.list(work);
        for (Machine machine : kit.machines()) {
            Optional<Job> most = choices.stream()
                    .filter(choice -> choice.machine().equals(machine))
                    .map(choice -> new Job(work, choice, todo(work, choice), count))
                    .filter(job -> asked(job) > 0)
                    .max(Comparator.comparingInt(this::asked));
            if (most.isPresent()) {
                return most;
            }
        }
        return Optional.empty();
    }

    private BitSet todo(Standing work, Choice choice) {
        var all = new BitSet(work.tasks().size());
        for (int i = 0; i < work.tasks().size(); i++) {
            all.set(
                    i,
                    !(work.tasks().get(i) instanceof Task.CentreIn)
                            || work.shape().body().inside().isEmpty());
        }
        return new Reach(kit, ways, new Trueness(making.part()), new Reach.Held(work, choice)).all(all);
    }

    private int asked(Job job) {
        BitSet asked = job.todo();
        asked.and(job.work().tasks().required());
        return asked.cardinality();
    }
}
