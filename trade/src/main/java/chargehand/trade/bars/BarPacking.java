package chargehand.trade.bars;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Packs pieces of several lengths into bars all alike that lie there, in as few of them as may be.
 *
 * @param bars what comes out of each
 * @param proved whether fewer bars would not do
 */
public record BarPacking(List<Filled> bars, boolean proved) {
    public BarPacking {
        bars = List.copyOf(bars);
    }

    /**
     * Pieces of one length.
     *
     * @param need what each takes of the bar, its cut counted in, more than nought
     */
    public record Wanted(Length need, int count) {}

    /**
     * One bar.
     *
     * @param counts how many of each of the pieces wanted, in their order
     * @param taken what they take
     */
    public record Filled(List<Integer> counts, Length taken) {
        public Filled {
            counts = List.copyOf(counts);
        }
    }

    /**
     * The packing; empty where so many bars do not hold them, as far as was tried.
     *
     * @param offers what of each bar can be used
     * @param available how many bars there are
     */
    public static Optional<BarPacking> of(List<Wanted> wanted, Length offers, int available) {
        if (wanted.isEmpty()) {
            return Optional.of(new BarPacking(List.of(), true));
        }
        if (wanted.stream().anyMatch(each -> each.need().isMoreThan(offers))) {
            return Optional.empty();
        }
        List<Length> lengths = wanted.stream()
                .map(Wanted::need)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
        var kind = new StockKind(offers, offers.nanometres(), available, 1, 0);
        var question = new CutQuestion(
                lengths.stream().map(length -> piece(length, wanted)).toList(), List.of(kind), Length.ZERO);
        return new CutSearch(question).plan().map(plan -> of(plan, lengths, wanted));
    }

    private static CutQuestion.Piece piece(Length length, List<Wanted> wanted) {
        return new CutQuestion.Piece(
                length,
                wanted.stream()
                        .filter(each -> each.need().equals(length))
                        .mapToInt(Wanted::count)
                        .sum());
    }

    private static BarPacking of(CutPlan plan, List<Length> lengths, List<Wanted> wanted) {
        int[] left = wanted.stream().mapToInt(Wanted::count).toArray();
        var filled = new ArrayList<Filled>();
        for (CutBar bar : plan.bars()) {
            var counts = new ArrayList<Integer>();
            int[] here = new int[lengths.size()];
            for (int i = 0; i < here.length; i++) {
                here[i] = bar.count(i);
            }
            for (int i = 0; i < wanted.size(); i++) {
                int length = lengths.indexOf(wanted.get(i).need());
                int count = Math.min(left[i], here[length]);
                left[i] -= count;
                here[length] -= count;
                counts.add(count);
            }
            filled.add(new Filled(counts, new Length(bar.taken())));
        }
        return new BarPacking(filled, plan.proved());
    }
}
