package chargehand.trade.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for the cheapest plan bar by bar: each bar takes the longest piece left and is filled in every full way, the best
 * filled first. A branch that cannot beat the best plan so far is left, and so is one whose leftover pieces were met before at
 * no more cost. Before that, quick plans are made in several ways to have something to beat, and where all bars are alike the
 * gap to the bound is closed by {@link FewestBars}, if it can be.
 */
final class CutSearch {
    private static final long QUICK_STEPS = 150_000;
    private static final long STEPS = 250_000;
    private static final int MOST_REMEMBERED = 200_000;

    /** Costs this near are the same. */
    private static final double SAME = 1e-9;

    /** How much a quick plan favours long pieces, from not at all. */
    private static final double[] FAVOURS = {1.0, 1.01, 1.02, 1.05, 1.1, 1.2, 1.4, 1.7, 2.0};

    private final CutQuestion question;
    private final CutBound bound;
    private final Map<List<Integer>, Double> met = new HashMap<>();
    private final Effort effort = new Effort(STEPS);
    private final CutPatterns patterns;
    private final List<CutBar> bars = new ArrayList<>();
    private List<CutBar> best = List.of();
    private double bestCost = Double.MAX_VALUE;

    CutSearch(CutQuestion question) {
        this.question = question;
        bound = new CutBound(question);
        patterns = new CutPatterns(question);
    }

    /** The best plan found; empty where the bars that are there do not hold the pieces, as far as was tried. */
    Optional<CutPlan> plan() {
        int[] none = new int[question.kinds().size()];
        double least = bound.cost(question.counts(), none);
        quick(least);
        if (bestCost > least + SAME && question.isOneKind()) {
            least = closed(least);
        }
        if (bestCost > least + SAME) {
            search(question.counts(), none, 0);
        }
        boolean tried = !effort.isSpent() && !patterns.isCutShort();
        boolean proved = bestCost <= least + SAME || tried;
        return best.isEmpty() ? Optional.empty() : Optional.of(new CutPlan(best, proved ? bestCost : least, proved));
    }

    /** The bound, better where it can be; keeps a better plan as well. */
    private double closed(double least) {
        StockKind kind = question.kinds().getFirst();
        long below = best.isEmpty() ? 1L + kind.available() : best.size();
        var fewest = new FewestBars(question, Math.round(least / kind.cost()), below);
        fewest.better().ifPresent(plan -> keep(plan, plan.size() * kind.cost()));
        return fewest.bound() * kind.cost();
    }

    private void quick(double least) {
        var steps = new Effort(QUICK_STEPS);
        for (double favour : FAVOURS) {
            if (bestCost <= least + SAME || steps.isSpent()) {
                return;
            }
            dive(favour, new CutPatterns(question), steps);
        }
    }

    /** Takes the bar that seems best again and again; the first such plan is always finished. */
    private void dive(double favour, CutPatterns ways, Effort steps) {
        int[] left = question.counts();
        var used = new int[question.kinds().size()];
        var plan = new ArrayList<CutBar>();
        double cost = 0;
        while (any(left)) {
            List<CutBar> choices = choices(left, used, ways);
            steps.spend(choices.size());
            Optional<CutBar> bar = choices.stream()
                    .min(Comparator.comparingDouble(each -> each.kind().cost() / worth(each, favour)));
            if (bar.isEmpty() || (steps.isSpent() && !best.isEmpty())) {
                return;
            }
            plan.add(bar.get());
            cost += bar.get().kind().cost();
            take(left, used, bar.get(), 1);
        }
        keep(plan, cost);
    }

    private double worth(CutBar bar, double favour) {
        double worth = 0;
        for (int i = 0; i < question.size(); i++) {
            worth += bar.count(i)
                    * Math.pow((double) question.need(i) / bar.kind().offers(), favour);
        }
        return worth;
    }

    private List<CutBar> choices(int[] left, int[] used, CutPatterns ways) {
        var choices = new ArrayList<CutBar>();
        for (int k = 0; k < used.length; k++) {
            StockKind kind = question.kinds().get(k);
            if (used[k] < kind.available()) {
                choices.addAll(ways.withLongest(left, kind));
            }
        }
        return choices;
    }

    private void search(int[] left, int[] used, double cost) {
        if (!any(left)) {
            keep(bars, cost);
            return;
        }
        if (!effort.spend() || cost + bound.cost(left, used) >= bestCost - SAME || isMet(left, used, cost)) {
            return;
        }
        List<CutBar> choices = choices(left, used, patterns);
        effort.spend(choices.size());
        choices.sort(Comparator.comparingDouble(CutBar::dearness));
        for (CutBar bar : choices) {
            take(left, used, bar, 1);
            bars.add(bar);
            search(left, used, cost + bar.kind().cost());
            bars.removeLast();
            take(left, used, bar, -1);
            if (effort.isSpent()) {
                return;
            }
        }
    }

    private boolean isMet(int[] left, int[] used, double cost) {
        var state = new ArrayList<Integer>(left.length + used.length);
        Arrays.stream(left).forEach(state::add);
        if (!question.isOneKind()) {
            Arrays.stream(used).forEach(state::add);
        }
        Double before = met.get(state);
        if (before != null && before <= cost + SAME) {
            return true;
        }
        if (met.size() < MOST_REMEMBERED) {
            met.put(state, cost);
        }
        return false;
    }

    private void take(int[] left, int[] used, CutBar bar, int times) {
        for (int i = 0; i < left.length; i++) {
            left[i] -= times * bar.count(i);
        }
        used[question.kinds().indexOf(bar.kind())] += times;
    }

    private static boolean any(int[] left) {
        return Arrays.stream(left).anyMatch(count -> count > 0);
    }

    private void keep(List<CutBar> plan, double cost) {
        if (cost < bestCost - SAME) {
            bestCost = cost;
            best = List.copyOf(plan);
        }
    }
}
