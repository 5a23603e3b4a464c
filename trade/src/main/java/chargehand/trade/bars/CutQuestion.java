package chargehand.trade.bars;

import chargehand.measure.Length;
import java.util.List;

/**
 * Pieces wanted and bars to cut them from.
 *
 * @param pieces longest first, no length twice
 * @param kinds of bar
 * @param kerf what each cut takes
 */
record CutQuestion(List<Piece> pieces, List<StockKind> kinds, Length kerf) {
    CutQuestion {
        pieces = List.copyOf(pieces);
        kinds = List.copyOf(kinds);
    }

    /** Pieces of one length. */
    record Piece(Length length, int count) {}

    /** What a piece takes of a bar: its length and one cut (nm). */
    long need(int piece) {
        return pieces.get(piece).length().plus(kerf).nanometres();
    }

    int size() {
        return pieces.size();
    }

    int[] counts() {
        return pieces.stream().mapToInt(Piece::count).toArray();
    }

    /** Whether only one kind of bar is there and as many as it takes, so that plans are counted in bars. */
    boolean isOneKind() {
        return kinds.size() == 1;
    }
}
