package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.SetUp;
import chargehand.method.setting.Job;
import chargehand.method.setting.SetUpWriter;
import chargehand.method.work.Standing;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds the set-ups that make a turned part from one blank in the least total time: best-first search (A*) over the work as
 * it stands, each step one whole set-up. A set-up does all it can reach, or leaves out threads, bores, centres or the parting
 * where another holding may do them better. Exact over these choices, since the bound on what remains never exceeds it; and
 * where patience ends it, what it has found so far stands, with the least that anything still open could take.
 *
 * <p>A set-up waits in the queue by what it takes at the least, and is written out in full only when its turn comes.
 */
final class SetUpSearch {
    private final Effort effort;
    private final Remaining remaining;
    private final Jobs jobs;
    private final int firstNumber;
    private final PriorityQueue<Open> queue = new PriorityQueue<>(Comparator.comparingDouble(Open::bound));
    private final Set<String> settled = new HashSet<>();
    private Optional<Way> best = Optional.empty();
    private double limit = Double.MAX_VALUE;

    /**
     * A search for one way of getting the part out of its stock.
     *
     * @param firstNumber the number of the first set-up it writes
     */
    SetUpSearch(List<Lathe> lathes, Jobs jobs, Effort effort, int firstNumber) {
        this.effort = effort;
        this.remaining = new Remaining(fastest(lathes), effort.pieces());
        this.jobs = jobs;
        this.firstNumber = firstNumber;
    }

    /**
     * How a search ended.
     *
     * @param way the quickest found, if any was quicker than the limit
     * @param least seconds that no way takes less than, at most the limit
     */
    record Ended(Optional<Way> way, double least) {}

    /** What waits to be gone on with. */
    private sealed interface Open {
        /** Seconds that the whole takes at the least this way. */
        double bound();

        /** A way whose set-ups are all written out. */
        record Reached(Way way) implements Open {
            @Override
            public double bound() {
                return way.bound();
            }
        }

        /** A way and a set-up to go on with, not written out yet. */
        record Tried(Way from, Job job, Standing then, BitSet met, double bound) implements Open {
            String key() {
                return Way.key(then, met, Changeover.holder(job.choice()));
            }
        }
    }

    private static double fastest(List<Lathe> lathes) {
        return lathes.stream()
                .mapToDouble(lathe -> lathe.speeds().fastest().rpm() * SetUpWriter.COARSEST_FEED.mm())
                .max()
                .orElse(1);
    }

    /** The quickest way from raw work to the finished part, whose total stays below so many seconds. */
    Ended quickest(Standing raw, double below) {
        return quickest(Way.raw(raw, remaining.seconds(raw)), below);
    }

    private Ended quickest(Way begun, double below) {
        limit = below;
        queue.add(new Open.Reached(begun));
        return search();
    }

    /** The quickest way on from another, whose next holding is one of these. */
    Ended quickest(Way begun, Predicate<Choice> next, double below) {
        limit = below;
        jobs.of(begun.work(), next).forEach(job -> open(begun, job));
        return search();
    }

    private Ended search() {
        while (!queue.isEmpty() && queue.peek().bound() < limit) {
            if (!effort.patience().isLeft()) {
                return new Ended(best, queue.peek().bound());
            }
            goOn(queue.poll());
        }
        return new Ended(best, limit);
    }

    private void goOn(Open open) {
        switch (open) {
            case Open.Reached(Way way) -> {
                if (settled.add(way.key())) {
                    jobs.of(way.work(), effort.thorough()).forEach(job -> open(way, job));
                }
            }
            case Open.Tried tried -> {
                if (!settled.contains(tried.key())) {
                    reach(written(tried));
                }
            }
        }
    }

    private void open(Way way, Job job) {
        Open.Tried tried = tried(way, job);
        if (tried.bound() < limit) {
            queue.add(tried);
        }
    }

    /** The way with one more set-up, and what the whole takes then at the least, before it is seen what it does take. */
    private Open.Tried tried(Way way, Job job) {
        Standing then = work(job);
        BitSet met = effort.bidden().met(way.work(), job.choice());
        met.or(way.met());
        double least = way.seconds()
                + Changeover.setting(way.last(), job.choice()).seconds()
                + job.choice().costs().loading().seconds() * effort.pieces()
                + remaining.operations(way.work(), job.todo())
                + remaining.seconds(then);
        return new Open.Tried(way, job, then, met, Math.max(least, way.bound()));
    }

    /** The work as it stands once a job is done. */
    static Standing work(Job job) {
        return job.work().after(job.todo(), job.choice().gripped() instanceof Choice.Gripped.OnCentres);
    }

    /** A finished way is kept if it is the quickest; any other waits for its turn. */
    private void reach(Way way) {
        if (!way.work().isFinished() || !effort.bidden().isMet(way.met())) {
            queue.add(new Open.Reached(way));
        } else if (way.seconds() < limit) {
            best = Optional.of(way);
            limit = way.seconds();
        }
    }

    private Way written(Open.Tried tried) {
        effort.patience().spend();
        Way from = tried.from();
        SetUp written = jobs.written(tried.job(), firstNumber + from.steps().size());
        SetUp setUp = Changeover.after(from.last(), tried.job().choice(), written);
        double seconds = from.seconds() + setUp.time(effort.pieces()).seconds();
        double bound = Math.max(seconds + remaining.seconds(tried.then()), tried.bound());
        return from.with(new Way.Step(tried.job(), setUp), tried.then(), tried.met(), seconds, bound);
    }
}
