package chargehand.trade.bars;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The way to fill one bar that is worth most, each piece having a worth of its own. Exact, in whole numbers: pieces are tried
 * in the order of their worth for each length, and a branch is left when the room it has could not be worth enough.
 */
final class DearestBar {
    private static final long STEPS = 200_000;

    /** More than the rounding of what room could be worth. */
    private static final double ROUNDING = 1e-3;

    private final CutQuestion question;
    private final int[] counts;
    private final long offers;
    private long[] worth = {};
    private int[] order = {};
    private int[] taken = {};
    private int[] best = {};
    private long most;
    private Effort effort = new Effort(STEPS);

    DearestBar(CutQuestion question) {
        this.question = question;
        counts = question.counts();
        offers = question.kinds().getFirst().offers();
    }

    /** What comes out of a bar. */
    static final class Dearest {
        private final int[] counts;
        private final long worth;

        private Dearest(int[] counts, long worth) {
            this.counts = counts;
            this.worth = worth;
        }

        /** How many of each piece. */
        int[] counts() {
            return counts.clone();
        }

        /** The worth of all of them. */
        long worth() {
            return worth;
        }
    }

    /** The bar worth most; empty where that would take too long to be sure of. */
    Optional<Dearest> of(long[] worthOfEach) {
        worth = worthOfEach;
        order = IntStream.range(0, counts.length)
                .filter(piece -> worth[piece] > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(piece -> -perLength(piece)))
                .mapToInt(Integer::intValue)
                .toArray();
        taken = new int[counts.length];
        best = new int[counts.length];
        most = 0;
        effort = new Effort(STEPS);
        fill(0, offers, 0);
        return effort.isOverspent() ? Optional.empty() : Optional.of(new Dearest(best, most));
    }

    private void fill(int at, long room, long sum) {
        if (sum > most) {
            most = sum;
            best = taken.clone();
        }
        if (at == order.length || !effort.spend() || !mayExceed(at, room, sum)) {
            return;
        }
        int piece = order[at];
        long need = question.need(piece);
        for (int take = (int) Math.min(counts[piece], room / need); take >= 0; take--) {
            taken[piece] = take;
            fill(at + 1, room - take * need, sum + take * worth[piece]);
        }
        taken[piece] = 0;
    }

    private boolean mayExceed(int at, long room, long sum) {
        return Math.floor(room * perLength(order[at]) + ROUNDING) > most - sum;
    }

    private double perLength(int piece) {
        return (double) worth[piece] / question.need(piece);
    }
}
