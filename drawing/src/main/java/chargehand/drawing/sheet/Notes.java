package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Point;
import chargehand.measure.LengthUnit;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The notes of a drawing, numbered, broken to the width of the title block above which they stand.
 *
 * @param lines of each note
 */
record Notes(List<List<String>> lines) {
    private static final Lettering LETTERING = Lettering.height(2.5);
    private static final double INDENT = 5;
    private static final double WIDTH = TitleBlock.WIDTH - INDENT - 6;

    Notes {
        lines = List.copyOf(lines);
    }

    /**
     * The notes of a part.
     *
     * @param fromSizes what is said in words because no size says it
     */
    static Notes of(Part part, List<String> fromSizes) {
        List<String> notes = new ArrayList<>();
        notes.add(
                part.unit() == LengthUnit.INCH
                        ? "Sizes in inches unless another unit is written. Inch limits are given to .0001."
                        : "Sizes in millimetres unless another unit is written.");
        notes.add("Sizes without limits: general tolerance " + part.general().text() + ".");
        notes.addAll(fromSizes);
        notes.addAll(part.notes());
        return new Notes(notes.stream()
                .map(note -> LETTERING.wrap(note, WIDTH))
                .filter(wrapped -> !wrapped.isEmpty())
                .toList());
    }

    /** What they say, unbroken. */
    List<String> said() {
        return lines.stream().map(note -> String.join(" ", note)).toList();
    }

    /** How high they are (mm). */
    double height() {
        return lines.stream().mapToInt(List::size).sum() * LETTERING.linePitch();
    }

    /** Draws them from a left edge, the last line standing on a base line. */
    void draw(Canvas canvas, Point lastLine) {
        double y = lastLine.y() - height() + LETTERING.linePitch();
        for (int i = 0; i < lines.size(); i++) {
            canvas.words(LETTERING, new Point(lastLine.x(), y), Integer.toString(i + 1));
            for (String line : lines.get(i)) {
                canvas.words(LETTERING, new Point(lastLine.x() + INDENT, y), line);
                y += LETTERING.linePitch();
            }
        }
    }
}
