package chargehand.trade.bars;

import java.util.Optional;

/**
 * The best mix of ways to fill bars of one kind when a bar may also be cut in part, and with it the worth of each piece. Ways
 * are taken in one by one, always the one worth most, until none is worth more than a bar (Gilmore and Gomory, A linear
 * programming approach to the cutting-stock problem, 1961; from memory).
 */
final class BarMix {
    /** What a bar is worth when the prices are right. */
    private static final long WHOLE_BAR = 1_000_000_000;

    /** A way worth so little more than a bar is none to take in. */
    private static final long NO_MORE = 100;

    private static final int ROUNDS_A_PIECE = 12;
    private static final double BELOW_NOUGHT = -1e-9;

    private final int[] counts;
    private final DearestBar dearest;
    private final Mix mix;
    private Optional<Worth> worth = Optional.empty();

    BarMix(CutQuestion question) {
        counts = question.counts();
        dearest = new DearestBar(question);
        mix = new Mix(question);
        int rounds = ROUNDS_A_PIECE * (question.size() + 1);
        while (rounds > 0 && improve()) {
            rounds--;
        }
    }

    Mix mix() {
        return mix;
    }

    /** The worth that says most of how many bars it takes; empty where not one could be made sure of. */
    Optional<Worth> worth() {
        return worth;
    }

    private boolean improve() {
        double[] prices = mix.prices();
        int least = least(prices);
        if (prices[least] < BELOW_NOUGHT) {
            return mix.leaveOver(least);
        }
        long[] each = new long[prices.length];
        for (int piece = 0; piece < each.length; piece++) {
            each[piece] = Math.max(0, (long) (prices[piece] * WHOLE_BAR));
        }
        return dearest.of(each)
                .filter(bar -> bar.worth() > 0)
                .map(bar -> take(each, bar))
                .orElse(false);
    }

    private boolean take(long[] each, DearestBar.Dearest bar) {
        Worth here = new Worth(each, bar.worth());
        if (worth.map(before -> before.parts(counts) < here.parts(counts)).orElse(true)) {
            worth = Optional.of(here);
        }
        return bar.worth() > WHOLE_BAR + NO_MORE && mix.take(bar.counts());
    }

    private static int least(double[] prices) {
        int least = 0;
        for (int piece = 1; piece < prices.length; piece++) {
            least = prices[piece] < prices[least] ? piece : least;
        }
        return least;
    }
}
