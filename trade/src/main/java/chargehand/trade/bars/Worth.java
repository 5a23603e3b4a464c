package chargehand.trade.bars;

/**
 * A worth for each piece, such that what comes out of one bar is never worth more than a certain sum. Then no plan takes fewer
 * bars than all pieces are worth in such sums. In whole numbers, so that no rounding can spoil the proof.
 */
final class Worth {
    private final long[] each;
    private final long bar;

    /**
     * @param each of the pieces
     * @param bar the most that one bar can be worth, more than nought
     */
    Worth(long[] each, long bar) {
        this.each = each.clone();
        this.bar = bar;
    }

    /** The worth of one piece. */
    long each(int piece) {
        return each[piece];
    }

    /** The most that one bar can be worth. */
    long bar() {
        return bar;
    }

    /** The worth of so many of each piece. */
    long of(int[] counts) {
        long sum = 0;
        for (int piece = 0; piece < counts.length; piece++) {
            sum += counts[piece] * each[piece];
        }
        return sum;
    }

    /** What so many bars would have to lose of what they could be worth. */
    long spare(int[] counts, long bars) {
        return bars * bar - of(counts);
    }

    /** The fewest bars that so many of each piece could come out of. */
    long bars(int[] counts) {
        return Math.ceilDiv(of(counts), bar);
    }

    /** The same before it is rounded up, to tell which of two worths says more. */
    double parts(int[] counts) {
        return (double) of(counts) / bar;
    }
}
