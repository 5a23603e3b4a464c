package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.Rack;
import chargehand.method.search.SetUpSearch.Effort;
import chargehand.method.setting.Making;
import chargehand.method.setting.SawWork;
import chargehand.method.setting.SetUpWriter;
import chargehand.method.setting.ThreadWays;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Candidates;
import chargehand.method.stock.CuttingUp;
import chargehand.method.stock.StockChooser;
import chargehand.method.stock.Way;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans a turned part: the best method over the stock candidates and the two ways round to begin. */
final class TurnedPlanner {
    /** How many pieces of stock are searched in full; the rest are dearer in metal and seldom quicker. */
    private static final int MOST_CANDIDATES = 8;

    /** The most set-ups weighed for one part before giving up. */
    private static final long MOST_WEIGHED = 6_000;

    /** What a dearer use of metal must save to be taken: minutes for each place down the chooser's list. */
    private static final double SECONDS_PER_PLACE = 60;

    private final Kit kit;
    private final Rack rack;
    private final Part part;
    private final Body.Turned body;
    private final Unreached unreached;
    private final ThreadWays ways;

    TurnedPlanner(Kit kit, Rack rack, Part part, Body.Turned body) {
        this.kit = kit;
        this.rack = rack;
        this.part = part;
        this.body = body;
        this.unreached = new Unreached(part, kit);
        this.ways = new ThreadWays(kit.tooling());
    }

    /** A method found, with its time and what its place in the list of stock costs. */
    private record Found(Method method, double seconds) {}

    Planned plan(int count) {
        Candidates candidates = StockChooser.candidates(part, count, rack, CuttingUp.with(kit));
        if (candidates.fit().isEmpty()) {
            return new Planned.NotHere(List.of(Reasons.noStock(part, candidates.passedOver())));
        }
        List<Task> missing =
                new Owned(kit, ways, body).missing(Tasks.of(body, false).list());
        List<Task> asked = missing.stream()
                .filter(task -> !(task instanceof Task.CentreIn))
                .toList();
        boolean givenByStock = asked.stream().allMatch(Task.Flats.class::isInstance);
        if (!givenByStock) {
            return new Planned.NotHere(
                    asked.stream().map(unreached::reason).distinct().toList());
        }
        var quick = new Effort(count, false, new Patience(MOST_WEIGHED));
        var thorough = new Effort(count, true, new Patience(MOST_WEIGHED));
        Optional<Found> best = best(candidates, quick).or(() -> best(candidates, thorough));
        long weighed = quick.patience().spent() + thorough.patience().spent();
        return best.<Planned>map(found -> new Planned.Ready(found.method(), weighed))
                .orElseGet(() -> new Planned.NotHere(unreached.reasons()));
    }

    private Optional<Found> best(Candidates candidates, Effort effort) {
        Optional<Found> best = Optional.empty();
        List<Candidate> fit = candidates.fit().stream().limit(MOST_CANDIDATES).toList();
        for (int place = 0; place < fit.size(); place++) {
            double handicap = place * SECONDS_PER_PLACE;
            for (End headstock : End.values()) {
                double limit = best.map(Found::seconds).orElse(Double.MAX_VALUE) - handicap;
                Optional<Found> found = plan(fit.get(place), headstock, new Bound(effort, limit), candidates);
                if (found.isPresent()) {
                    best = Optional.of(
                            new Found(found.get().method(), found.get().seconds() + handicap));
                }
            }
        }
        return best;
    }

    private record Bound(Effort effort, double seconds) {
        int count() {
            return effort.pieces();
        }
    }

    private Optional<Found> plan(Candidate candidate, End headstock, Bound bound, Candidates candidates) {
        boolean oneWayOnly = candidate.way() == Way.SAWN && headstock == End.A;
        if (oneWayOnly) {
            return Optional.empty();
        }
        Blank blank = candidate.blank(body.length(), headstock);
        Optional<Standing.Slot> slot = slot(candidate, headstock);
        var tasks = Tasks.of(body, slot.isPresent());
        var raw = new Standing.Raw(blank, slot, Given.isBright(candidate));
        Standing standing = Standing.raw(tasks, raw, Given.tasks(tasks, candidate));
        var stock = new FromStock(part, candidate, candidates.passedOver());
        var making = new Making(part, body, stock.material(), kit);
        List<SetUp> first = sawing(candidate, blank);
        double before = first.stream()
                .mapToDouble(setUp -> setUp.time(bound.count()).seconds())
                .sum();
        var search = new SetUpSearch(making, new SetUpWriter(making, ways), unreached, bound.effort());
        Optional<SetUpSearch.Way> way = search.quickest(standing, first.size() + 1, bound.seconds() - before);
        return way.map(found -> {
            var setUps = new ArrayList<>(first);
            setUps.addAll(found.setUps());
            Method method = stock.method(bound.count(), blank, setUps);
            return new Found(method, before + found.seconds());
        });
    }

    private List<SetUp> sawing(Candidate candidate, Blank blank) {
        return candidate.way() == Way.FROM_BAR
                ? List.of()
                : List.of(SawWork.blanks(kit.saws().getFirst(), blank));
    }

    /** The parting slot just beyond the facing allowance on the bar's side. */
    private Optional<Standing.Slot> slot(Candidate candidate, End headstock) {
        if (candidate.way() == Way.SAWN) {
            return Optional.empty();
        }
        Length width = PartingWidth.of(kit, candidate);
        Length end = headstock == End.A ? Length.ZERO : body.length();
        Length partSide = headstock.from(end, candidate.allowances().facing());
        return Optional.of(new Standing.Slot(partSide, headstock.from(partSide, width), headstock));
    }
}
