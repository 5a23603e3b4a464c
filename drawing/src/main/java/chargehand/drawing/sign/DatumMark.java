package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import java.util.List;

/**
 * A datum of ISO 1101: a filled triangle on the feature, a stem, and a box with a letter (proportions from memory).
 *
 * @param letter which datum
 * @param stem from the feature to the box (mm), more than the triangle's height
 * @param height of the lettering (mm)
 */
public record DatumMark(String letter, double stem, double height) {
    /** How high the triangle is, in lettering heights. */
    private static final double TRIANGLE = 0.87;

    /** The side of the box (mm). */
    public double side() {
        return 2 * height;
    }

    /**
     * Its marks on a feature.
     *
     * @param frame its origin on the feature, its base line along it, the mark going up from it
     * @param upright the same origin in a frame that is not turned, for the letter
     */
    public List<Mark> marks(Local frame, Local upright) {
        double half = height / 2;
        double out = frame.at(0, 1).y() < frame.origin().y() ? 1 : -1;
        double middle = out * (stem + side() / 2);
        Lettering lettering = Lettering.height(height);
        double letterAt = -lettering.width(letter) / 2;
        return List.of(
                new Mark.Fill(Ink.INK, frame.round(-half, 0, half, 0, 0, TRIANGLE * height)),
                new Mark.Line(LineStyle.NARROW, Ink.INK, frame.at(0, 0), frame.at(0, stem)),
                new Mark.Stroke(
                        LineStyle.SYMBOL,
                        Ink.INK,
                        frame.round(-height, stem, height, stem, height, stem + side(), -height, stem + side())),
                Wording.words(upright, letterAt, middle - height / 2, lettering, letter, Ink.INK));
    }
}
