package chargehand.method.stock;

import static chargehand.measure.LengthText.in;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.part.Part;
import chargehand.trade.sum.Working;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A piece of the right material and thick enough: what is left to ask is whether it is long enough.
 *
 * @param part what is made
 * @param piece on the rack
 * @param answer about its material
 * @param room how the part goes in
 */
record Suitable(Part part, Piece piece, Answer.WillDo answer, Room.Enough room) {
    /** The candidate this piece is when cut up so; empty where it gives fewer than {@code count}. */
    Optional<Candidate> candidate(CuttingUp.Cut cut, int count) {
        if (all(cut) < count) {
            return Optional.empty();
        }
        Working working = new Working();
        Yield gives = new YieldWorking(this, cut, working).worked(count);
        answer.cautions().forEach(working::caution);
        room.cautions().forEach(working::caution);
        return Optional.of(new Candidate(
                piece,
                room.raw(),
                room.asDrawn(),
                answer.match(),
                cut.way(),
                cut.allowances(),
                gives,
                working.steps(),
                working.cautions()));
    }

    /** Why no way of cutting it up gives enough. */
    String tooFew(List<CuttingUp.Cut> cuts, int count) {
        CuttingUp.Cut best =
                cuts.stream().max(Comparator.comparingInt(this::all)).orElseThrow();
        return all(best) == 0 ? tooShort(cuts) : "it gives only " + all(best) + " of " + count;
    }

    private String tooShort(List<CuttingUp.Cut> cuts) {
        Length needed = cuts.stream()
                .map(cut -> cut.allowances()
                        .blank(room.along())
                        .plus(cut.allowances().held()))
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return "it is too short: " + in(length(), part.unit()) + " is left of it and one piece takes at least "
                + in(needed, part.unit());
    }

    Length length() {
        return piece.length().length();
    }

    private int perLength(CuttingUp.Cut cut) {
        return cut.allowances().piecesIn(length(), room.along());
    }

    /** As many as all the lengths that lie there give. */
    private int all(CuttingUp.Cut cut) {
        return (int) Math.min(Integer.MAX_VALUE, (long) perLength(cut) * piece.count());
    }
}
