package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.holding.Holdings;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.SetUp;
import chargehand.method.setting.Job;
import chargehand.method.setting.Making;
import chargehand.method.setting.SetUpWriter;
import chargehand.method.work.Standing;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Finds the set-ups that make a turned part from one blank in the least total time: best-first search (A*) over the work as
 * it stands, each step one whole set-up. A set-up does all it can reach, or leaves out threads, bores, centres or the parting
 * where another holding may do them better. Exact over these choices, since the bound on what remains never exceeds it.
 */
final class SetUpSearch {
    /** Length over least diameter from which work may want a centre: less than any holding's own limit. */
    private static final double SLENDER = 3;

    private final Making making;
    private final Holdings holdings;
    private final SetUpWriter writer;
    private final Trueness trueness;
    private final Unreached unreached;
    private final Remaining remaining;
    private final Allowances allowances;
    private final boolean thorough;
    private final int pieces;
    private final Patience patience;
    private final BitSet reached = new BitSet();

    /** A search for one way of getting the part out of its stock. */
    SetUpSearch(Making making, SetUpWriter writer, Unreached unreached, Effort effort) {
        this.making = making;
        this.holdings = new Holdings(making.kit());
        this.writer = writer;
        this.trueness = new Trueness(making.part().ties());
        this.unreached = unreached;
        this.thorough = effort.thorough();
        this.pieces = effort.pieces();
        this.patience = effort.patience();
        this.remaining = new Remaining(fastest(making.kit().lathes()), pieces);
        this.allowances = new Allowances(wantsCentres(making));
    }

    /**
     * How much is looked at.
     *
     * @param pieces how many are made
     * @param thorough whether set-ups are weighed too that leave out what they could do
     * @param patience when to give up
     */
    record Effort(int pieces, boolean thorough, Patience patience) {}

    /** Work needs centres when it is slender or when surfaces are tied to each other. */
    private static boolean wantsCentres(Making making) {
        Length length = making.body().length();
        Length least = making.body().outside().stream()
                .filter(section -> !(section instanceof Section.Groove))
                .map(section -> Length.least(section.diameterTowardsA(), section.diameterTowardsB()))
                .min(Comparator.naturalOrder())
                .orElse(length);
        return !making.part().ties().isEmpty() || length.over(least) > SLENDER;
    }

    /**
     * A way to a standing.
     *
     * @param work as it stands then
     * @param setUps that lead there
     * @param seconds they take
     * @param bound what the whole will take at the least
     */
    record Way(Standing work, List<SetUp> setUps, double seconds, double bound) {
        /** Two ways with the same key have the same future: the same work, and the same set-up still on the machine. */
        String key() {
            return work.key() + (setUps.isEmpty() ? "" : Changeover.holder(setUps.getLast()));
        }
    }

    private static double fastest(List<Lathe> lathes) {
        return lathes.stream()
                .mapToDouble(lathe -> lathe.speeds().fastest().rpm() * SetUpWriter.COARSEST_FEED.mm())
                .max()
                .orElse(1);
    }

    /** The quickest way from raw work to the finished part, whose total stays below {@code limit} seconds. */
    Optional<Way> quickest(Standing raw, int firstNumber, double limit) {
        unreached.want(raw.tasks());
        raw.done().stream().mapToObj(raw.tasks()::get).forEach(unreached::reach);
        var queue = new PriorityQueue<Way>(Comparator.comparingDouble(Way::bound));
        var settled = new HashSet<String>();
        queue.add(new Way(raw, List.of(), 0, remaining.seconds(raw)));
        while (!queue.isEmpty() && patience.isLeft()) {
            Way way = queue.poll();
            if (way.bound() >= limit) {
                return Optional.empty();
            }
            if (way.work().isFinished()) {
                return Optional.of(way);
            }
            if (settled.add(way.key())) {
                queue.addAll(onward(way, firstNumber, new Known(settled, limit)));
            }
        }
        return Optional.empty();
    }

    /** What need not be weighed again: standings dealt with, and whatever takes so many seconds or more. */
    private record Known(Set<String> settled, double limit) {}

    private List<Way> onward(Way way, int firstNumber, Known known) {
        var best = new HashMap<String, Way>();
        for (Job job : jobs(way.work())) {
            if (least(way, job) < known.limit()) {
                Way next = after(way, job, firstNumber);
                if (!known.settled().contains(next.key())) {
                    best.merge(next.key(), next, (one, other) -> one.seconds() <= other.seconds() ? one : other);
                }
            }
        }
        return List.copyOf(best.values());
    }

    /** What the whole takes at the least once this job is done, before it is written out to see what it does take. */
    private double least(Way way, Job job) {
        double loading = job.choice().costs().loading().seconds() * pieces;
        return way.seconds() + loading + remaining.seconds(done(way.work(), job));
    }

    private static Standing done(Standing work, Job job) {
        return work.after(job.todo(), job.choice().gripped() instanceof Choice.Gripped.OnCentres);
    }

    private Way after(Way way, Job job, int firstNumber) {
        patience.spend();
        SetUp written = writer.write(firstNumber + way.setUps().size(), job);
        SetUp setUp =
                way.setUps().isEmpty() ? written : Changeover.after(way.setUps().getLast(), written);
        var setUps = new ArrayList<>(way.setUps());
        setUps.add(setUp);
        Standing work = done(way.work(), job);
        double seconds = way.seconds() + setUp.time(pieces).seconds();
        return new Way(work, List.copyOf(setUps), seconds, seconds + remaining.seconds(work));
    }

    /** The jobs worth weighing: of those that do the same on the same machine, the holding that costs least. */
    private List<Job> jobs(Standing work) {
        Map<String, Job> jobs = new HashMap<>();
        List<BitSet> sets = allowances.of(work);
        for (Choice choice : holdings.list(work)) {
            var held = new Reach.Held(work, choice);
            for (BitSet allowed : sets) {
                BitSet todo = new Reach(making.kit(), writer.threadWays(), trueness, held).all(allowed);
                if (!todo.isEmpty()) {
                    reach(work, todo);
                    jobs.merge(key(choice, todo), new Job(work, choice, todo, pieces), this::cheaper);
                }
            }
        }
        return thorough ? List.copyOf(jobs.values()) : largest(List.copyOf(jobs.values()));
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
                && cost(other) <= cost(job);
    }

    private double cost(Job job) {
        return job.choice().costs().time(pieces).seconds();
    }

    /** Holdings that differ in what the work is true to are kept apart where the drawing ties surfaces. */
    private String key(Choice choice, BitSet todo) {
        String heldBy = making.part().ties().isEmpty() ? "" : choice.gripped().toString();
        return choice.machine().name() + todo + heldBy;
    }

    private Job cheaper(Job one, Job other) {
        return cost(one) <= cost(other) ? one : other;
    }
}
