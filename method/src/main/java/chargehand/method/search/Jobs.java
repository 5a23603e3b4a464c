package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.holding.Holdings;
import chargehand.method.plan.SetUp;
import chargehand.method.setting.Job;
import chargehand.method.setting.Making;
import chargehand.method.setting.SetUpWriter;
import chargehand.method.setting.ThreadWays;
import chargehand.method.work.Standing;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The set-ups worth weighing for the work as it stands: every holding that can do something, with what it is to do. */
final class Jobs {
    private final Making making;
    private final Holdings holdings;
    private final ThreadWays ways;
    private final Trueness trueness;
    private final Unreached unreached;
    private final Allowances allowances;
    private final Bidden bidden;
    private final int pieces;
    private final SetUpWriter writer;
    private final BitSet reached = new BitSet();
    private final Map<String, List<Job>> every = new HashMap<>();
    private final Map<String, List<Job>> largest = new HashMap<>();
    private final IdentityHashMap<Job, SetUp> written = new IdentityHashMap<>();

    /**
     * The jobs of one part from one piece of stock.
     *
     * @param pieces how many are made
     */
    Jobs(Making making, ThreadWays ways, Unreached unreached, Bidden bidden, int pieces) {
        this.making = making;
        this.holdings = new Holdings(making.kit(), making.body(), making.material());
        this.ways = ways;
        this.trueness = new Trueness(making.part());
        this.unreached = unreached;
        this.allowances = Allowances.of(making);
        this.bidden = bidden;
        this.pieces = pieces;
        this.writer = new SetUpWriter(making, ways);
    }

    /**
     * Of the jobs that do the same on the same machine, the holding that costs least. Work that stands the same takes the same
     * jobs, whatever is on the machine.
     *
     * @param all with those that leave out what another does at no more cost
     */
    List<Job> of(Standing work, boolean all) {
        String key = work.key();
        List<Job> jobs = every.computeIfAbsent(key, any -> of(work, choice -> true));
        return all ? jobs : largest.computeIfAbsent(key, any -> largest(jobs));
    }

    /** The same of these holdings alone. */
    List<Job> of(Standing work, Predicate<Choice> holdings) {
        return List.copyOf(cheapest(work, holdings).values());
    }

    /** A job written out in full as the set-up of this number, once. */
    SetUp written(Job job, int number) {
        return written.computeIfAbsent(job, each -> writer.write(number, each)).withNumber(number);
    }

    private Map<String, Job> cheapest(Standing work, Predicate<Choice> among) {
        Map<String, Job> jobs = new HashMap<>();
        List<BitSet> sets = allowed(work);
        for (Choice choice : holdings.list(work)) {
            if (among.test(choice) && bidden.allows(work, choice)) {
                var held = new Reach.Held(work, choice);
                for (BitSet allowed : sets) {
                    BitSet todo = new Reach(making.kit(), ways, trueness, held).all(allowed);
                    if (!todo.isEmpty()) {
                        reach(work, todo);
                        jobs.merge(key(work, choice, todo), new Job(work, choice, todo, pieces), this::cheaper);
                    }
                }
            }
        }
        return jobs;
    }

    private List<BitSet> allowed(Standing work) {
        BitSet waiting = bidden.waiting(work);
        List<BitSet> sets = allowances.of(work);
        sets.forEach(set -> set.andNot(waiting));
        return sets;
    }

    /** Tells once of each task that it can be done. */
    private void reach(Standing work, BitSet todo) {
        todo.stream().filter(number -> !reached.get(number)).forEach(number -> {
            reached.set(number);
            unreached.reach(work.tasks().get(number));
        });
    }

    /** Without those that do only a part of what another does on the same machine from the same side at no more cost. */
    private List<Job> largest(List<Job> jobs) {
        return jobs.stream()
                .filter(job -> jobs.stream().noneMatch(other -> isCovered(job, other)))
                .toList();
    }

    /** Centre holes count for nothing here, and what is tied to something else may be better left for another holding. */
    private boolean isCovered(Job job, Job other) {
        BitSet required = job.work().tasks().required();
        BitSet more = other.todo();
        more.and(required);
        more.andNot(job.todo());
        BitSet less = job.todo();
        less.and(required);
        less.andNot(other.todo());
        return less.isEmpty()
                && !more.isEmpty()
                && more.stream()
                        .noneMatch(number -> trueness.isTied(job.work().tasks().get(number)))
                && job.choice().machine().equals(other.choice().machine())
                && cost(other) <= cost(job)
                && met(job).equals(met(other));
    }

    private double cost(Job job) {
        return job.choice().costs().time(pieces).seconds();
    }

    private BitSet met(Job job) {
        return bidden.met(job.work(), job.choice());
    }

    /** Holdings that differ in what the work is true to are kept apart where the drawing ties surfaces. */
    private String key(Standing work, Choice choice, BitSet todo) {
        String heldBy = making.part().ties().isEmpty() ? "" : choice.gripped().toString();
        return choice.machine().name() + todo + heldBy + bidden.met(work, choice);
    }

    private Job cheaper(Job one, Job other) {
        return cost(one) <= cost(other) ? one : other;
    }
}
