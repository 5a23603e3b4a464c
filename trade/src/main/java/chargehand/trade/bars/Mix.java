package chargehand.trade.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * As many ways to fill a bar as there are pieces, and how often each is cut, in fractions of a bar too: a basis of the linear
 * programme that asks for the fewest bars. A way may also be one piece left over, which costs nothing.
 */
final class Mix {
    private static final double SMALL = 1e-9;

    private final int size;
    private final List<int[]> ways = new ArrayList<>();
    private final double[] costs;
    private final double[] amounts;
    private final double[][] inverse;

    /** Begins with bars that hold one length only. */
    Mix(CutQuestion question) {
        size = question.size();
        costs = new double[size];
        amounts = new double[size];
        inverse = new double[size][size];
        long offers = question.kinds().getFirst().offers();
        int[] counts = question.counts();
        for (int piece = 0; piece < size; piece++) {
            int fit = (int) Math.min(counts[piece], offers / question.need(piece));
            int[] way = new int[size];
            way[piece] = fit;
            ways.add(way);
            costs[piece] = 1;
            amounts[piece] = (double) counts[piece] / fit;
            inverse[piece][piece] = 1.0 / fit;
        }
    }

    /** What one more of each piece would cost, in bars. */
    double[] prices() {
        double[] prices = new double[size];
        for (int row = 0; row < size; row++) {
            for (int piece = 0; piece < size; piece++) {
                prices[piece] += costs[row] * inverse[row][piece];
            }
        }
        return prices;
    }

    /** Takes in a bar filled so, in place of the way that is used up first; false where nothing is used up. */
    boolean take(int[] way) {
        return take(way, 1);
    }

    /** Lets a piece be left over. */
    boolean leaveOver(int piece) {
        int[] way = new int[size];
        way[piece] = -1;
        return take(way, 0);
    }

    private boolean take(int[] way, double cost) {
        double[] change = change(way);
        int out = -1;
        for (int row = 0; row < size; row++) {
            if (change[row] > SMALL && (out < 0 || amounts[row] / change[row] < amounts[out] / change[out])) {
                out = row;
            }
        }
        if (out < 0) {
            return false;
        }
        exchange(out, change);
        ways.set(out, way);
        costs[out] = cost;
        return true;
    }

    private double[] change(int[] way) {
        double[] change = new double[size];
        for (int row = 0; row < size; row++) {
            for (int piece = 0; piece < size; piece++) {
                change[row] += inverse[row][piece] * way[piece];
            }
        }
        return change;
    }

    private void exchange(int out, double[] change) {
        amounts[out] /= change[out];
        for (int piece = 0; piece < size; piece++) {
            inverse[out][piece] /= change[out];
        }
        for (int row = 0; row < size; row++) {
            if (row != out && change[row] != 0) {
                amounts[row] -= change[row] * amounts[out];
                for (int piece = 0; piece < size; piece++) {
                    inverse[row][piece] -= change[row] * inverse[out][piece];
                }
            }
        }
    }

    /** The bars that the mix cuts whole, as far as there are pieces for them. */
    List<int[]> whole(int[] counts) {
        int[] left = counts.clone();
        var whole = new ArrayList<int[]>();
        for (int row = 0; row < size; row++) {
            int[] way = ways.get(row);
            for (int times = (int) (amounts[row] + SMALL); times > 0 && costs[row] > 0 && holds(left, way); times--) {
                Arrays.setAll(left, piece -> left[piece] - way[piece]);
                whole.add(way);
            }
        }
        return whole;
    }

    private static boolean holds(int[] left, int[] way) {
        for (int piece = 0; piece < left.length; piece++) {
            if (left[piece] < way[piece]) {
                return false;
            }
        }
        return true;
    }
}
