package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.measure.WorkTime;
import chargehand.method.holding.Holdings;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.NotTaken;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.setting.Job;
import chargehand.method.setting.Making;
import chargehand.method.setting.SawWork;
import chargehand.method.setting.ThreadWays;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Candidates;
import chargehand.method.stock.Way;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.method.wish.Names;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** Plans a turned part: the best method over the stock candidates and the two ways round to begin. */
final class TurnedPlanner {
    /** How many pieces of stock are searched in full; the rest are dearer in metal and seldom quicker. */
    private static final int MOST_CANDIDATES = 8;

    /** The most set-ups weighed for one part before giving up. */
    private static final long MOST_WEIGHED = 6_000;

    /** The most weighed once a method is found, of set-ups that leave out what they could do. */
    private static final long MOST_AT_SECOND_LOOK = 150;

    /** The most weighed for whoever is in haste. */
    private static final long MOST_IN_HASTE = 1_200;

    /** What a dearer use of metal must save to be taken: minutes for each place down the chooser's list. */
    static final double SECONDS_PER_PLACE = 60;

    private final Kit kit;
    private final Part part;
    private final Body.Turned body;
    private final Bidden bidden;
    private final Unreached unreached;
    private final ThreadWays ways;
    private final IdentityHashMap<Candidate, List<Begun>> begun = new IdentityHashMap<>();

    TurnedPlanner(Kit kit, Part part, Body.Turned body, Bidden bidden) {
        this.kit = kit;
        this.part = part;
        this.body = body;
        this.bidden = bidden;
        this.unreached = new Unreached(part, kit, body);
        this.ways = new ThreadWays(kit.tooling());
    }

    /**
     * A method found.
     *
     * @param begun what it was found from
     * @param way its set-ups but for the sawing
     * @param seconds its time, with what its place in the list of stock counts on
     */
    record Found(Begun begun, chargehand.method.search.Way way, double seconds) {
        Method method() {
            var setUps = new ArrayList<>(begun.sawing());
            setUps.addAll(way.setUps());
            return begun.stock().method(begun.count(), begun.work().blank(), setUps);
        }
    }

    /**
     * Work that may be begun.
     *
     * @param stock what it is cut from
     * @param work as it stands before the first holding
     * @param sawing the set-up that comes before, if any
     * @param jobs what can be done on it
     */
    record Begun(FromStock stock, Standing work, List<SetUp> sawing, int count, Jobs jobs) {
        /** What comes before the first holding takes. */
        double seconds() {
            return sawing.stream()
                    .mapToDouble(setUp -> setUp.time(count).seconds())
                    .sum();
        }
    }

    /** How a search over all stock ended: the best, and what nothing takes less than. */
    record Looked(Optional<Found> best, double least) {}

    Planned plan(int count, Candidates candidates, Haste haste) {
        List<Task> missing = missing();
        if (!missing.isEmpty()) {
            return new Planned.NotHere(
                    missing.stream().map(unreached::reason).distinct().toList());
        }
        boolean hasty = haste == Haste.SOME;
        var quick = new Effort(count, false, new Patience(hasty ? MOST_IN_HASTE : MOST_WEIGHED), bidden);
        Looked looked = best(candidates, quick);
        if (looked.best().isPresent()) {
            var second = new Effort(count, true, new Patience(hasty ? 0 : MOST_AT_SECOND_LOOK), bidden);
            return ready(secondLook(looked, candidates, second), List.of(quick, second), candidates);
        }
        if (hasty) {
            return new Planned.NotHere(unreached.reasons());
        }
        var thorough = effort(count, true);
        Looked again = best(candidates, thorough);
        return again.best().isPresent()
                ? ready(again, List.of(quick, thorough), candidates)
                : new Planned.NotHere(unreached.reasons());
    }

    /** Why the method that {@link #plan} finds is not held otherwise; nothing where there is none. */
    List<NotTaken> whyNot(int count, Candidates candidates, Names names) {
        if (!missing().isEmpty()) {
            return List.of();
        }
        return found(count, candidates)
                .map(found -> new WhyNot(this, kit, found).list(names, effort(count, false)))
                .orElse(List.of());
    }

    private Optional<Found> found(int count, Candidates candidates) {
        Looked quick = best(candidates, effort(count, false));
        if (quick.best().isEmpty()) {
            return best(candidates, effort(count, true)).best();
        }
        var second = new Effort(count, true, new Patience(MOST_AT_SECOND_LOOK), bidden);
        return secondLook(quick, candidates, second).best();
    }

    /** What comes out when nobody looks ahead, from the first stock that leads to the end; empty where none does. */
    Optional<PlainMethod> inFixedOrder(int count, Candidates candidates) {
        if (!missing().isEmpty()) {
            return Optional.empty();
        }
        List<Candidate> fit = candidates.fit().stream().limit(MOST_CANDIDATES).toList();
        for (int place = 0; place < fit.size(); place++) {
            for (Begun begun : begun(new FromStock(part, fit.get(place), candidates.passedOver()), count)) {
                var setUps = new FixedOrder(kit, part, body, begun).from(begun);
                if (setUps.isPresent()) {
                    Method method = begun.stock().method(count, begun.work().blank(), setUps.get());
                    WorkTime counted = method.time().plus(WorkTime.seconds(place * SECONDS_PER_PLACE));
                    return Optional.of(new PlainMethod(method, counted));
                }
            }
        }
        return Optional.empty();
    }

    private Effort effort(int count, boolean thorough) {
        return new Effort(count, thorough, new Patience(MOST_WEIGHED), bidden);
    }

    Holdings holdings(Begun begun) {
        return new Holdings(kit, body, begun.stock().material());
    }

    BitSet met(Job job) {
        return bidden.met(job.work(), job.choice());
    }

    /** What nothing that is owned will make of what is not there already; flats may come with the stock, and centre holes are only aids. */
    private List<Task> missing() {
        List<Task> asked = new Owned(kit, ways, body)
                .missing(Tasks.of(body, false).list()).stream()
                        .filter(task -> !(task instanceof Task.CentreIn) && !Given.isThere(task, body))
                        .toList();
        boolean givenByStock = asked.stream().allMatch(Task.Flats.class::isInstance);
        return givenByStock ? List.of() : asked;
    }

    private static Planned ready(Looked looked, List<Effort> efforts, Candidates candidates) {
        Found found = looked.best().orElseThrow();
        int all = candidates.fit().size();
        int searched = Math.min(all, MOST_CANDIDATES);
        var bound = new Bound(
                WorkTime.seconds(found.seconds()),
                WorkTime.seconds(looked.least()),
                searched,
                all - searched,
                efforts.getLast().patience().isLeft());
        long weighed =
                efforts.stream().mapToLong(effort -> effort.patience().spent()).sum();
        return new Planned.Ready(found.method(), weighed, bound);
    }

    /** Weighs set-ups too that leave out what they could do, against what is found already; ended early, it proves nothing. */
    private Looked secondLook(Looked first, Candidates candidates, Effort effort) {
        Looked again = best(candidates, effort, first.best());
        double least = effort.patience().isLeft() ? again.least() : first.least();
        return new Looked(
                again.best(), Math.min(least, again.best().map(Found::seconds).orElse(least)));
    }

    private Looked best(Candidates candidates, Effort effort) {
        return best(candidates, effort, Optional.empty());
    }

    private Looked best(Candidates candidates, Effort effort, Optional<Found> known) {
        Optional<Found> best = known;
        double least = Double.MAX_VALUE;
        List<Candidate> fit = candidates.fit().stream().limit(MOST_CANDIDATES).toList();
        for (int place = 0; place < fit.size(); place++) {
            for (Begun begun : beginnings(fit.get(place), candidates, effort.pieces())) {
                double limit = best.map(Found::seconds).orElse(Double.MAX_VALUE);
                Looked looked = look(begun, effort, limit, place * SECONDS_PER_PLACE);
                least = Math.min(least, looked.least());
                if (looked.best().isPresent()) {
                    best = looked.best();
                }
            }
        }
        return new Looked(best, least);
    }

    /** The beginnings on a candidate, kept from one look to the next. */
    private List<Begun> beginnings(Candidate candidate, Candidates candidates, int count) {
        return begun.computeIfAbsent(
                candidate, each -> begun(new FromStock(part, each, candidates.passedOver()), count));
    }

    /** The best from one blank, if it stays below so many seconds with what the stock counts on. */
    private Looked look(Begun begun, Effort effort, double limit, double handicap) {
        double before = begun.seconds() + handicap;
        SetUpSearch.Ended ended = search(begun, effort).quickest(begun.work(), limit - before);
        return new Looked(
                ended.way().map(way -> new Found(begun, way, before + way.seconds())), before + ended.least());
    }

    /** A search for the set-ups that follow on a beginning. */
    SetUpSearch search(Begun begun, Effort effort) {
        unreached.want(begun.work());
        return new SetUpSearch(
                kit.lathes(), begun.jobs(), effort, begun.sawing().size() + 1);
    }

    /** The ways round that work from one piece of stock is begun. */
    List<Begun> begun(FromStock stock, int count) {
        Candidate candidate = stock.candidate();
        List<End> ends = isWhole(candidate) ? List.of(End.B) : List.of(End.A, End.B);
        return ends.stream().map(headstock -> begun(stock, headstock, count)).toList();
    }

    /** Whether nothing is to be parted off, so that the work may be begun either way round. */
    private static boolean isWhole(Candidate candidate) {
        return candidate.way() == Way.SAWN || candidate.way() == Way.AS_IT_CAME;
    }

    private static boolean isSawn(Candidate candidate) {
        return candidate.way() == Way.SAWN || candidate.way() == Way.SAWN_WITH_STUB;
    }

    private Begun begun(FromStock stock, End headstock, int count) {
        Candidate candidate = stock.candidate();
        Blank blank = candidate.blank(body.length(), headstock);
        Optional<Standing.Slot> slot = slot(candidate, headstock);
        var tasks = Tasks.of(body, slot.isPresent());
        var raw = new Standing.Raw(blank, slot, Given.isBright(candidate));
        List<SetUp> sawing =
                isSawn(candidate) ? List.of(SawWork.blanks(kit.saws().getFirst(), blank)) : List.of();
        var jobs = new Jobs(new Making(part, body, stock.material(), kit), ways, unreached, bidden, count);
        return new Begun(stock, Standing.raw(tasks, raw, Given.tasks(tasks, candidate)), sawing, count, jobs);
    }

    /** The parting slot just beyond the facing allowance on the bar's side. */
    private Optional<Standing.Slot> slot(Candidate candidate, End headstock) {
        if (isWhole(candidate)) {
            return Optional.empty();
        }
        Length width = PartingWidth.of(kit, candidate);
        Length end = headstock == End.A ? Length.ZERO : body.length();
        Length partSide = headstock.from(end, candidate.allowances().facing());
        return Optional.of(new Standing.Slot(partSide, headstock.from(partSide, width), headstock));
    }
}
