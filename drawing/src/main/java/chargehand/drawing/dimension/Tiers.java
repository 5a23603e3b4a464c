package chargehand.drawing.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Stacks lengths in tiers outward from a view: shorter ones nearer, so that a longer one goes round those within it. Where an
 * extension line would still run through a dimension line or its words, other orders are tried, and words on the other side.
 */
final class Tiers {
    private static final double STRUCK = 3_000;
    private static final double CROSSED = 50;
    private static final double CROWDED = 20;
    private static final double PER_TIER = 0.5;
    private static final int ROUNDS = 4;

    /** Up to so many lengths any may be moved anywhere in the row; with more, a few places on. */
    private static final int FEW = 16;

    private static final int NEAREST = 3;

    /** More lengths than this are stacked as they come: the search would take too long. */
    private static final int MOST_SEARCHED = 24;

    private final List<Double> clear;
    private final List<Double> beyond;
    private final List<Double> ends;

    private Tiers(List<Span> spans, List<Double> clear, List<Double> beyond) {
        this.clear = clear;
        this.beyond = beyond;
        ends = new ArrayList<>(clear);
        ends.addAll(beyond);
        spans.forEach(span -> ends.addAll(List.of(span.from(), span.to())));
    }

    /** A length, and on which side of it words stand that find no room within. */
    private record Choice(Span span, boolean wordsAfter) {
        Choice turned() {
            return new Choice(span, !wordsAfter);
        }
    }

    /**
     * Gives each length its tier.
     *
     * @param clear further places that words outside a length should keep away from
     * @param beyond where extension lines go past all of them
     */
    static List<Tiered> of(List<Span> spans, List<Double> clear, List<Double> beyond) {
        Tiers tiers = new Tiers(spans, clear, beyond);
        List<Choice> order = spans.stream()
                .sorted(Comparator.comparingInt(Span::rank)
                        .thenComparingDouble(Span::length)
                        .thenComparingDouble(Span::from))
                .map(span -> new Choice(span, tiers.room(span, true) > tiers.room(span, false)))
                .toList();
        return spans.size() > MOST_SEARCHED ? stacked(order) : tiers.searched(order);
    }

    /** How badly stacked lengths lie: extension lines through lines and words. */
    static double crossings(List<Tiered> stack, List<Double> beyond) {
        double cost = 0;
        for (Tiered one : stack) {
            List<Double> passing = passing(one, stack, beyond);
            cost += CROSSED * passing.stream().filter(one::isCrossedAt).count();
            cost += one.isStruckAt(passing) ? STRUCK : 0;
        }
        return cost;
    }

    /** Where the extension lines of lengths further out go past a length. */
    static List<Double> passing(Tiered one, List<Tiered> stack, List<Double> beyond) {
        List<Double> passing = new ArrayList<>(beyond);
        for (Tiered other : stack) {
            if (other.tier() > one.tier()) {
                passing.add(other.span().from());
                passing.add(other.span().to());
            }
        }
        return passing;
    }

    private double cost(List<Tiered> stack) {
        double cost = crossings(stack, beyond);
        for (Tiered one : stack) {
            cost += PER_TIER * one.tier();
            cost += CROWDED * clear.stream().filter(one::isCrossedAt).count();
        }
        return cost;
    }

    private List<Tiered> searched(List<Choice> start) {
        List<Choice> best = start;
        List<Tiered> stack = stacked(best);
        double least = cost(stack);
        boolean better = true;
        for (int round = 0; better && round < ROUNDS && (crossings(stack, beyond) > 0 || !clear.isEmpty()); round++) {
            better = false;
            for (List<Choice> other : neighbours(best)) {
                List<Tiered> tried = stacked(other);
                double cost = cost(tried);
                if (cost < least - 1e-9) {
                    best = other;
                    stack = tried;
                    least = cost;
                    better = true;
                }
            }
        }
        return stack;
    }

    /** Orders that differ in one length: its words on the other side, or its place in the row, or both. */
    private static List<List<Choice>> neighbours(List<Choice> order) {
        List<List<Choice>> all = new ArrayList<>();
        int reach = Math.max(NEAREST, FEW - order.size());
        for (int i = 0; i < order.size(); i++) {
            for (int j = Math.max(0, i - reach); j < Math.min(order.size(), i + reach + 1); j++) {
                for (Choice moved : List.of(order.get(i), order.get(i).turned())) {
                    List<Choice> other = new ArrayList<>(order);
                    other.remove(i);
                    other.add(j, moved);
                    if (order.get(i).span.rank() == order.get(j).span.rank()) {
                        all.add(other);
                    }
                }
            }
        }
        return all;
    }

    /** Each in the nearest tier that goes round all before it that it overlaps. */
    private static List<Tiered> stacked(List<Choice> order) {
        List<Tiered> stack = new ArrayList<>();
        for (Choice choice : order) {
            int tier = 0;
            for (Tiered other : stack) {
                boolean within = other.span().overlaps(choice.span)
                        || choice.span.rank() > other.span().rank();
                tier = within ? Math.max(tier, other.tier() + 1) : tier;
            }
            Tiered tiered = new Tiered(choice.span, tier, choice.wordsAfter);
            while (stack.stream().anyMatch(tiered::clashes)) {
                tier++;
                tiered = new Tiered(choice.span, tier, choice.wordsAfter);
            }
            stack.add(tiered);
        }
        return stack;
    }

    /** How far it is to the next end of another length, after this one or before it (mm). */
    private double room(Span span, boolean after) {
        double end = after ? span.to() : span.from();
        return ends.stream()
                .filter(x -> after ? x > end : x < end)
                .mapToDouble(x -> Math.abs(x - end))
                .min()
                .orElse(Double.MAX_VALUE);
    }
}
