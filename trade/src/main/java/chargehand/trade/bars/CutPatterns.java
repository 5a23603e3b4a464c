package chargehand.trade.bars;

import java.util.ArrayList;
import java.util.List;

/**
 * The full ways to fill one bar from what is left: none has room for another piece. Only these need be tried, for a piece cut
 * earlier than it must be does no harm.
 */
final class CutPatterns {
    /** Where there are more ways than this many steps find, the fullest of pieces come first and the rest is left out. */
    private static final long STEPS_A_BAR = 6_000;

    private final CutQuestion question;
    private boolean cutShort;

    CutPatterns(CutQuestion question) {
        this.question = question;
    }

    /** Whether some way was left out so far. */
    boolean isCutShort() {
        return cutShort;
    }

    /** The ways that hold the longest piece left, so that no plan is met in two orders. */
    List<CutBar> withLongest(int[] left, StockKind kind) {
        int longest = 0;
        while (left[longest] == 0) {
            longest++;
        }
        var filling = new Filling(left, kind, new ArrayList<>());
        if (question.need(longest) <= kind.offers()) {
            filling.start(longest);
        }
        cutShort |= filling.effort.isOverspent();
        return filling.found();
    }

    /** One bar being filled. */
    private final class Filling {
        private final int[] left;
        private final StockKind kind;
        private final List<CutBar> found;
        private final int[] counts;
        private final Effort effort = new Effort(STEPS_A_BAR);

        Filling(int[] left, StockKind kind, List<CutBar> found) {
            this.left = left;
            this.kind = kind;
            this.found = found;
            counts = new int[left.length];
        }

        List<CutBar> found() {
            return found;
        }

        void start(int longest) {
            most(longest, 1, kind.offers());
        }

        /** Takes each number of this piece that fits, most first, and goes on with shorter ones. */
        private void most(int piece, int least, long room) {
            long need = question.need(piece);
            int most = (int) Math.min(left[piece], room / need);
            for (int take = most; take >= least && effort.spend(); take--) {
                counts[piece] = take;
                next(piece + 1, room - take * need);
            }
            counts[piece] = 0;
        }

        private void next(int from, long room) {
            int piece = from;
            while (piece < left.length && (left[piece] == 0 || question.need(piece) > room)) {
                piece++;
            }
            if (piece < left.length) {
                most(piece, 0, room);
            } else if (isFull(room)) {
                found.add(new CutBar(kind, counts, kind.offers() - room));
            }
        }

        private boolean isFull(long room) {
            for (int i = 0; i < left.length; i++) {
                if (left[i] > counts[i] && question.need(i) <= room) {
                    return false;
                }
            }
            return true;
        }
    }
}
