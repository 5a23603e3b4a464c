package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Raw;
import chargehand.method.stock.Way;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import java.util.BitSet;

/** What a piece of stock brings with it: surfaces that are already to size as drawn, and all that is there of an old part. */
final class Given {
    private Given() {}

    /** The numbers of the tasks that need not be done. */
    static BitSet tasks(Tasks tasks, Candidate candidate) {
        var given = new BitSet(tasks.size());
        if (candidate.way() == Way.AS_IT_CAME) {
            for (int i = 0; i < tasks.size(); i++) {
                given.set(i, isThere(tasks.get(i), tasks.shape().body()));
            }
        }
        if (!candidate.asDrawn()) {
            return given;
        }
        for (int i = 0; i < tasks.size(); i++) {
            given.set(i, isGiven(tasks.get(i), candidate.raw()));
        }
        return given;
    }

    /**
     * Whether a task is done on a part that comes back to be altered. Its ends lie where they will lie, since no drawing says
     * how long it was.
     */
    static boolean isThere(Task task, Body.Turned body) {
        return body.isAltered()
                && switch (task) {
                    case Task.FaceOf face -> true;
                    case Task.CentreIn centre -> hasCentre(body, centre.end());
                    case Task.Turned turned -> turned.section().isThere();
                    case Task.Corner corner -> corner.section().isThere();
                    case Task.Threading thread -> thread.section().isThere();
                    case Task.Teeth teeth -> teeth.section().isThere();
                    case Task.FaceHoles holes -> holes.holes().isThere();
                    case Task.Flats flats -> flats.section().isThere();
                    case Task.Inside inside -> inside.bore().isThere();
                    case Task.Crossing crossing -> crossing.across().isThere();
                    case Task.InWall inWall -> inWall.inBore().isThere();
                    case Task.OffTheBar off -> false;
                };
    }

    private static boolean hasCentre(Body.Turned body, End end) {
        return body.onEnds().stream()
                .anyMatch(feature -> feature instanceof OnEnd.Centre && feature.isThere() && feature.end() == end);
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
