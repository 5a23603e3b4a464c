package chargehand.trade.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Closes the gap between a plan and the bound where all bars are of one kind: a better bound by the worth of the pieces, then for
 * each number of bars between the two a plan, or proof that there is none.
 */
final class FewestBars {
    private final CutQuestion question;
    private final int[] counts;
    private final BarMix mix;
    private long bound;
    private Optional<List<CutBar>> better = Optional.empty();

    /**
     * Tries.
     *
     * @param bound a number of bars known to be needed
     * @param below a number of bars that is to be beaten
     */
    FewestBars(CutQuestion question, long bound, long below) {
        this.question = question;
        counts = question.counts();
        mix = new BarMix(question);
        this.bound =
                Math.max(bound, mix.worth().map(worth -> worth.bars(counts)).orElse(0L));
        mix.worth().ifPresent(worth -> close(worth, below));
    }

    /** The fewest bars that any plan takes, as far as is proved. */
    long bound() {
        return bound;
    }

    /** A plan with fewer bars than were to be beaten. */
    Optional<List<CutBar>> better() {
        return better;
    }

    private void close(Worth worth, long below) {
        for (long bars = bound; bars < below && better.isEmpty(); bars++) {
            better = mostlyMixed((int) bars, worth);
            if (better.isEmpty()) {
                var fit = new CloseFit(question, counts, (int) bars, worth);
                better = fit.plan();
                if (fit.isRuledOut() && bound == bars) {
                    bound++;
                }
            }
        }
    }

    /** Cuts the whole bars of the mix, and looks only for what is left. */
    private Optional<List<CutBar>> mostlyMixed(int bars, Worth worth) {
        List<int[]> whole = mix.mix().whole(counts);
        int[] left = counts.clone();
        whole.forEach(way -> Arrays.setAll(left, piece -> left[piece] - way[piece]));
        if (whole.isEmpty() || whole.size() > bars) {
            return Optional.empty();
        }
        return new CloseFit(question, left, bars - whole.size(), worth).plan().map(rest -> {
            var plan = new ArrayList<CutBar>();
            whole.forEach(way -> plan.add(bar(way)));
            plan.addAll(rest);
            return plan;
        });
    }

    private CutBar bar(int[] way) {
        long taken = 0;
        for (int piece = 0; piece < way.length; piece++) {
            taken += way[piece] * question.need(piece);
        }
        return new CutBar(question.kinds().getFirst(), way, taken);
    }
}
