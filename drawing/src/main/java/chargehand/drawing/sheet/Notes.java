package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Point;
import chargehand.measure.LengthUnit;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The notes of a drawing, numbered, broken to the room above the title block.
 *
 * @param lines of each note
 */
record Notes(List<List<String>> lines) {
    private static final Lettering LETTERING = Lettering.height(2.5);
    private static final double INDENT = 5;

    /** Lines are broken so much earlier than they must be: drawn signs are wider than letters (mm). */
    private static final double SPARE = 2;

    Notes {
        lines = List.copyOf(lines);
    }

    /**
     * The notes of a part.
     *
     * @param fromSizes what is said in words because no size says it
     * @param width there is for them (mm)
     */
    static Notes of(Part part, List<String> fromSizes, double width) {
        List<String> notes = new ArrayList<>();
        notes.add(
                part.unit() == LengthUnit.INCH
                        ? "Sizes in inches unless another unit is written. Inch limits are given to .0001."
                        : "Sizes in millimetres unless another unit is written.");
        notes.add("Sizes without limits: general tolerance " + part.general().text() + ".");
        notes.addAll(fromSizes);
        notes.addAll(part.notes());
        return new Notes(notes.stream()
                .map(note -> LETTERING.wrap(note, width - INDENT - SPARE))
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
                Lines.words(canvas, LETTERING, new Point(lastLine.x() + INDENT, y), line);
                y += LETTERING.linePitch();
            }
        }
    }
}
