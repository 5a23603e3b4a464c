package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.view.View;
import java.util.ArrayList;
import java.util.List;

/**
 * A view with its sizes, in the view's own frame.
 *
 * @param view what is shown
 * @param placed the sizes as they were placed
 * @param notes what is said in words instead
 */
public record Dimensioned(View view, List<Placing> placed, List<String> notes) {
    /** How much air words on an axis or hatching clear for themselves (mm). */
    private static final double AIR = 0.5;

    public Dimensioned {
        placed = List.copyOf(placed);
        notes = List.copyOf(notes);
    }

    /** Everything to draw, the view undermost; words on hatching or an axis get clear paper. */
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>(view.marks());
        marks.addAll(sizes());
        return marks;
    }

    /** What lies on the view: clear paper for words first, then the sizes. */
    public List<Mark> sizes() {
        List<Mark> marks = new ArrayList<>();
        Box seen = view.bounds();
        for (Placing placing : placed) {
            for (Box text : placing.texts()) {
                if (text.overlaps(seen)) {
                    marks.add(new Mark.Fill(Ink.PAPER, text.grown(AIR).path()));
                }
            }
        }
        placed.forEach(placing -> marks.addAll(placing.marks()));
        return marks;
    }

    /** How often words lie on something, or lines of sizes run through each other. */
    public int troubles() {
        return Troubles.of(this);
    }

    /** What all of it covers. */
    public Box bounds() {
        return Box.of(marks());
    }
}
