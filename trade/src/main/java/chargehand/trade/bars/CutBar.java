package chargehand.trade.bars;

/** One bar with what is cut from it. */
final class CutBar {
    private final StockKind kind;
    private final int[] counts;
    private final long taken;

    /**
     * @param counts how many of each piece, in the order of the question
     * @param taken what the pieces and their cuts take (nm)
     */
    CutBar(StockKind kind, int[] counts, long taken) {
        this.kind = kind;
        this.counts = counts.clone();
        this.taken = taken;
    }

    StockKind kind() {
        return kind;
    }

    int count(int piece) {
        return counts[piece];
    }

    /** What the pieces and their cuts take (nm). */
    long taken() {
        return taken;
    }

    /** What it costs for each nanometre it yields. */
    double dearness() {
        return kind.cost() / taken;
    }
}
