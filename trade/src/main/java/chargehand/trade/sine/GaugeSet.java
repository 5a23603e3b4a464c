package chargehand.trade.sine;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A set of gauge blocks made as the standard sets are: one series for each figure of a size, so that a stack takes away one
 * figure after another from the right.
 *
 * @param title what it is called
 * @param finest the finest step that a stack can be made to
 * @param series the blocks, finest series first; the last series may give several blocks to a stack
 */
public record GaugeSet(String title, Length finest, List<List<Length>> series) {
    /** The common metric set of 87 blocks, to 0.001 mm. */
    public static final GaugeSet METRIC = new GaugeSet(
            "metric set of 87",
            Length.mm(0.001),
            List.of(
                    steps(Length.mm(0.001), Length.mm(1.001), 9),
                    steps(Length.mm(0.01), Length.mm(1.01), 49),
                    steps(Length.mm(0.5), Length.mm(0.5), 19),
                    steps(Length.mm(10), Length.mm(10), 10)));

    /** The common inch set of 81 blocks, to 0.0001 in. */
    public static final GaugeSet INCH = new GaugeSet(
            "inch set of 81",
            Length.in(0.0001),
            List.of(
                    steps(Length.in(0.0001), Length.in(0.1001), 9),
                    steps(Length.in(0.001), Length.in(0.101), 49),
                    steps(Length.in(0.05), Length.in(0.05), 19),
                    steps(Length.in(1), Length.in(1), 4)));

    public GaugeSet {
        series = series.stream().map(List::copyOf).toList();
    }

    private static List<Length> steps(Length step, Length first, int howMany) {
        return IntStream.range(0, howMany)
                .mapToObj(i -> first.plus(new Length(step.nanometres() * i)))
                .toList();
    }

    /** A stack to the set's finest step, nearest to a height, of the fewest blocks; empty where the set cannot make it. */
    public Optional<List<Length>> stack(Length height) {
        long steps = Math.round((double) height.nanometres() / finest.nanometres());
        return best(new Length(steps * finest.nanometres()), 0);
    }

    private Optional<List<Length>> best(Length left, int from) {
        if (left.isZero()) {
            return Optional.of(List.of());
        }
        if (left.isNegative() || from == series.size()) {
            return Optional.empty();
        }
        if (from == series.size() - 1) {
            return coarse(left, series.get(from).size() - 1);
        }
        Optional<List<Length>> fewest = best(left, from + 1);
        for (Length block : series.get(from)) {
            if (couldEnd(left.minus(block), from + 1)) {
                fewest = fewer(fewest, best(left.minus(block), from + 1).map(rest -> with(block, rest)));
            }
        }
        return fewest;
    }

    /** Whether coarser series can still make this: it must be a whole number of their own steps. */
    private boolean couldEnd(Length left, int from) {
        List<Length> next = series.get(from);
        long step = next.get(1).minus(next.getFirst()).nanometres();
        return !left.isNegative() && left.nanometres() % step == 0;
    }

    private Optional<List<Length>> coarse(Length left, int largest) {
        List<Length> blocks = series.getLast();
        var taken = new ArrayList<Length>();
        Length rest = left;
        for (int i = largest; i >= 0; i--) {
            if (!blocks.get(i).isMoreThan(rest)) {
                taken.add(blocks.get(i));
                rest = rest.minus(blocks.get(i));
            }
        }
        return rest.isZero() ? Optional.of(taken) : Optional.empty();
    }

    private static Optional<List<Length>> fewer(Optional<List<Length>> one, Optional<List<Length>> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return other.get().size() < one.get().size() ? other : one;
    }

    private static List<Length> with(Length block, List<Length> rest) {
        var all = new ArrayList<Length>();
        all.add(block);
        all.addAll(rest);
        return List.copyOf(all);
    }
}
