package chargehand.trade.bars;

import java.util.Comparator;
import java.util.List;

/** What no plan can do better than. */
final class CutBound {
    /** Rounding of a fraction of a bar that is no fraction at all. */
    private static final double WHOLE = 1e-9;

    private static final int MOST_PARTS = 20;

    private final CutQuestion question;
    private final List<StockKind> cheapestFirst;

    CutBound(CutQuestion question) {
        this.question = question;
        cheapestFirst = question.kinds().stream()
                .sorted(Comparator.comparingDouble(kind -> kind.cost() / kind.offers()))
                .toList();
    }

    /**
     * The least cost of cutting what is left, as if bars could be bought by the millimetre; in whole bars where there is only
     * one kind.
     *
     * @param left how many of each piece
     * @param used how many of each kind of bar are gone
     */
    double cost(int[] left, int[] used) {
        if (question.isOneKind()) {
            return bars(left, question.kinds().getFirst().offers())
                    * question.kinds().getFirst().cost();
        }
        double need = need(left);
        double cost = 0;
        for (StockKind kind : cheapestFirst) {
            double there = kind.isBought()
                    ? need
                    : (double) kind.offers()
                            * (kind.available() - used[question.kinds().indexOf(kind)]);
            double taken = Math.min(need, there);
            cost += taken / kind.offers() * kind.cost();
            need -= taken;
        }
        return cost;
    }

    private double need(int[] left) {
        double need = 0;
        for (int i = 0; i < left.length; i++) {
            need += (double) left[i] * question.need(i);
        }
        return need;
    }

    /** The fewest bars of the longest kind that the pieces could come out of. */
    long bars() {
        long offers =
                question.kinds().stream().mapToLong(StockKind::offers).max().orElseThrow();
        return bars(question.counts(), offers);
    }

    /**
     * By length, and by the rounding functions of Fekete and Schepers: a piece of more than i of k + 1 parts of a bar counts for
     * i of k parts.
     */
    private long bars(int[] left, long offers) {
        double most = need(left) / offers;
        for (int parts = 1; parts <= MOST_PARTS; parts++) {
            double sum = 0;
            for (int i = 0; i < left.length; i++) {
                sum += left[i] * rounded(question.need(i), offers, parts);
            }
            most = Math.max(most, sum);
        }
        return (long) Math.ceil(most - WHOLE);
    }

    private static double rounded(long need, long offers, int parts) {
        long times = Math.multiplyExact(need, parts + 1);
        long whole = times / offers;
        return times % offers == 0 ? (double) need / offers : (double) whole / parts;
    }
}
