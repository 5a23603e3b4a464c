package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import java.util.List;

/**
 * The letter of an issue in a triangle, put where that issue changed something (drawing-office custom; proportions our own).
 *
 * @param letter of the issue
 * @param height of the lettering (mm)
 */
public record IssueMark(String letter, double height) implements Label {
    /** The side of the triangle and how high it is, in lettering heights. */
    private static final double SIDE = 3.4;

    private static final double RISE = SIDE * 0.866;

    /** How far the letter stands above the lower side. */
    private static final double LIFT = 0.45;

    @Override
    public double width() {
        return SIDE * height;
    }

    @Override
    public double ascent() {
        return (RISE - LIFT) * height;
    }

    @Override
    public double descent() {
        return LIFT * height;
    }

    @Override
    public List<Mark> marks(Local frame) {
        double middle = width() / 2;
        Lettering lettering = Lettering.height(height);
        return List.of(
                new Mark.Stroke(
                        LineStyle.NARROW, Ink.INK, frame.round(0, -descent(), width(), -descent(), middle, ascent())),
                Wording.words(frame, middle - lettering.width(letter) / 2, 0, lettering, letter, Ink.INK));
    }

    @Override
    public String toString() {
        return "issue " + letter;
    }
}
