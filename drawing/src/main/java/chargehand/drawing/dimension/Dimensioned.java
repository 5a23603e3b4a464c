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
        for (Placing placing : placed) {
            for (Box text : placing.texts()) {
                if (liesOnView(text)) {
                    marks.add(new Mark.Fill(Ink.PAPER, text.grown(AIR).path()));
                }
            }
        }
        placed.forEach(placing -> marks.addAll(placing.marks()));
        return marks;
    }

    /** Whether words lie on words, on an outline or on a line of another size somewhere. */
    public boolean isCrowded() {
        return placed.stream().anyMatch(this::isCrowded);
    }

    private boolean isCrowded(Placing placing) {
        return placing.texts().stream()
                .anyMatch(text -> view.outlines().stream().anyMatch(line -> line.meets(text))
                        || placed.stream()
                                .filter(other -> !other.equals(placing))
                                .anyMatch(other -> lies(text, other)));
    }

    private static boolean lies(Box text, Placing other) {
        return other.texts().stream().anyMatch(text::overlaps)
                || other.lines().stream().anyMatch(line -> line.segment().meets(text));
    }

    private boolean liesOnView(Box text) {
        return text.overlaps(view.bounds());
    }

    /** What all of it covers. */
    public Box bounds() {
        return Box.of(marks());
    }
}
