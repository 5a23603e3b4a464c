package chargehand.trade.bars;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The ways to fill a bar that a plan with a given number of bars may use: they lose no more room and worth than it has. */
final class CloseWays {
    private static final long STEPS = 400_000;
    private static final int MOST = 20_000;

    /** More than the rounding of what room could be worth. */
    private static final double ROUNDING = 1e-3;

    private final CutQuestion question;
    private final int[] counts;
    private final Worth worth;
    private final long spareRoom;
    private final long spareWorth;
    private final long[] needAfter;
    private final double[] dearestAfter;
    private final int[] taken;
    private final List<CloseWay> ways = new ArrayList<>();
    private final Effort effort = new Effort(STEPS);

    CloseWays(CutQuestion question, int[] counts, int bars, Worth worth) {
        this.question = question;
        this.counts = counts;
        this.worth = worth;
        int size = counts.length;
        taken = new int[size];
        needAfter = new long[size + 1];
        dearestAfter = new double[size + 1];
        for (int piece = size - 1; piece >= 0; piece--) {
            long need = question.need(piece);
            needAfter[piece] = needAfter[piece + 1] + counts[piece] * need;
            dearestAfter[piece] = Math.max(dearestAfter[piece + 1], (double) worth.each(piece) / need);
        }
        spareRoom = bars * offers() - needAfter[0];
        spareWorth = worth.spare(counts, bars);
    }

    /**
     * What was found.
     *
     * @param ways those that lose least worth first
     * @param complete whether these are all
     * @param room that all bars together may lose (nm), below nought where the pieces are too long for them
     * @param worth that they may lose, below nought likewise
     */
    record Found(List<CloseWay> ways, boolean complete, long room, long worth) {}

    Found found() {
        if (spareRoom >= 0 && spareWorth >= 0) {
            fill(0, offers(), 0);
        }
        ways.sort(Comparator.comparingLong(CloseWay::lost).thenComparingLong(CloseWay::room));
        return new Found(ways, !effort.isOverspent() && ways.size() < MOST, spareRoom, spareWorth);
    }

    private long offers() {
        return question.kinds().getFirst().offers();
    }

    private void fill(int piece, long room, long sum) {
        if (ways.size() >= MOST || !effort.spend() || losesTooMuch(piece, room, sum)) {
            return;
        }
        if (piece == counts.length) {
            ways.add(new CloseWay(taken, room, worth.bar() - sum));
            return;
        }
        long need = question.need(piece);
        for (int take = (int) Math.min(counts[piece], room / need); take >= 0; take--) {
            taken[piece] = take;
            fill(piece + 1, room - take * need, sum + take * worth.each(piece));
        }
        taken[piece] = 0;
    }

    private boolean losesTooMuch(int piece, long room, long sum) {
        double more = Math.min(room, needAfter[piece]) * dearestAfter[piece] + ROUNDING;
        return room - needAfter[piece] > spareRoom || worth.bar() - sum - more > spareWorth;
    }
}
