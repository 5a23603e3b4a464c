package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.holding.Holdings;
import chargehand.method.kit.Kit;
import chargehand.method.plan.SetUp;
import chargehand.method.search.TurnedPlanner.Begun;
import chargehand.method.setting.Job;
import chargehand.method.setting.Making;
import chargehand.method.setting.SetUpWriter;
import chargehand.method.setting.ThreadWays;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The least time there is, by going every way: every holding of the work as it stands, asked to do everything it reaches or
 * any part that the search ever leaves out, to the end, with no bound, no queue and nothing left aside as dearer. Only work
 * that stands just the same with the same on the machine is not gone on with twice.
 */
final class EveryWay {
    private final Kit kit;
    private final Making making;
    private final SetUpWriter writer;
    private final ThreadWays ways;
    private final Holdings holdings;
    private final int most;
    private final Map<String, Double> least = new HashMap<>();
    private long written;

    EveryWay(Kit kit, Part part, Body.Turned body, Begun begun, int most) {
        this.kit = kit;
        this.making = new Making(part, body, begun.stock().material(), kit);
        this.ways = new ThreadWays(kit.tooling());
        this.writer = new SetUpWriter(making, ways);
        this.holdings = new Holdings(kit, body, begun.stock().material());
        this.most = most;
    }

    /** How many set-ups were written out. */
    long written() {
        return written;
    }

    /** The seconds from raw work on, in so many set-ups at the most; beyond all bounds where there is no way. */
    double seconds(Begun begun) {
        return seconds(begun.work(), Optional.empty(), begun.count(), most);
    }

    private double seconds(Standing work, Optional<Choice> last, int count, int left) {
        if (work.isFinished()) {
            return 0;
        }
        if (left == 0) {
            return Double.MAX_VALUE;
        }
        String key = left + work.key() + last.map(Changeover::holder).orElse("");
        if (least.containsKey(key)) {
            return least.getOrDefault(key, Double.MAX_VALUE);
        }
        double best = Double.MAX_VALUE;
        for (Job job : jobs(work, count)) {
            written++;
            SetUp setUp = Changeover.after(last, job.choice(), writer.write(1, job));
            double rest = seconds(SetUpSearch.work(job), Optional.of(job.choice()), count, left - 1);
            best = Math.min(best, setUp.time(count).seconds() + rest);
        }
        least.put(key, best);
        return best;
    }

    private List<Job> jobs(Standing work, int count) {
        var jobs = new ArrayList<Job>();
        for (Choice choice : holdings.list(work)) {
            var seen = new HashSet<BitSet>();
            for (BitSet allowed : Allowances.of(making).of(work)) {
                BitSet todo =
                        new Reach(kit, ways, new Trueness(making.part()), new Reach.Held(work, choice)).all(allowed);
                if (!todo.isEmpty() && seen.add(todo)) {
                    jobs.add(new Job(work, choice, todo, count));
                }
            }
        }
        return jobs;
    }
}
