package chargehand.trade.bars;

import java.util.stream.IntStream;

/** One way to fill a bar, with what it loses. */
final class CloseWay {
    private final int[] counts;
    private final int[] pieces;
    private final long room;
    private final long lost;

    /**
     * @param counts how many of each piece
     * @param room left over (nm)
     * @param lost of what a bar can be worth
     */
    CloseWay(int[] counts, long room, long lost) {
        this.counts = counts.clone();
        pieces = IntStream.range(0, counts.length)
                .filter(piece -> counts[piece] > 0)
                .toArray();
        this.room = room;
        this.lost = lost;
    }

    boolean holds(int piece) {
        return counts[piece] > 0;
    }

    /** Whether so many of each piece are enough for it. */
    boolean isWithin(int[] left) {
        for (int piece : pieces) {
            if (counts[piece] > left[piece]) {
                return false;
            }
        }
        return true;
    }

    /** Whether none of what is left would still go in. */
    boolean isFull(int[] left, CutQuestion question) {
        for (int piece = left.length - 1; piece >= 0 && question.need(piece) <= room; piece--) {
            if (left[piece] > counts[piece]) {
                return false;
            }
        }
        return true;
    }

    /** Takes its pieces from those left, or with −1 puts them back. */
    void takeFrom(int[] left, int times) {
        for (int piece : pieces) {
            left[piece] -= times * counts[piece];
        }
    }

    /** Counts it for each of its pieces. */
    void tally(int[] ways) {
        for (int piece : pieces) {
            ways[piece]++;
        }
    }

    CutBar bar(StockKind kind) {
        return new CutBar(kind, counts, kind.offers() - room);
    }

    /** Room left over (nm). */
    long room() {
        return room;
    }

    /** What it is worth less than a bar can be. */
    long lost() {
        return lost;
    }
}
