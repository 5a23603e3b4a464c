package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Raw;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.part.Section;
import java.util.BitSet;

/** What a piece of stock brings with it: surfaces that are already to size as drawn. */
final class Given {
    private Given() {}

    /** The numbers of the tasks that need not be done. */
    static BitSet tasks(Tasks tasks, Candidate candidate) {
        var given = new BitSet(tasks.size());
        if (!candidate.asDrawn()) {
            return given;
        }
        for (int i = 0; i < tasks.size(); i++) {
            given.set(i, isGiven(tasks.get(i), candidate.raw()));
        }
        return given;
    }

    private static boolean isGiven(Task task, Raw raw) {
        return switch (raw) {
            case Raw.Round(Length diameter) ->
                task instanceof Task.Turned turned
                        && turned.section() instanceof Section.Round round
                        && round.diameter().length().equals(diameter);
            case Raw.Polygon(int sides, Length flats) ->
                (task instanceof Task.Turned turned && isOf(turned.section(), sides, flats))
                        || (task instanceof Task.Flats milled && isOf(milled.section(), sides, flats));
            case Raw.Flat flat -> false;
        };
    }

    private static boolean isOf(Section section, int sides, Length flats) {
        return section instanceof Section.Polygon polygon
                && polygon.sides() == sides
                && polygon.flats().length().equals(flats);
    }

    /** Whether the stock is true enough for a collet. */
    static boolean isBright(Candidate candidate) {
        return candidate.piece().condition() == Piece.Condition.BRIGHT && candidate.raw() instanceof Raw.Round;
    }
}
