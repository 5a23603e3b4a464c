package chargehand.drawing.sign;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import java.util.List;

/** The symbol of first-angle projection (ISO 5456-2; proportions from memory): a frustum at the left, its end view right. */
public final class ProjectionSymbol {
    /** How wide it is, in lettering heights. */
    public static final double WIDTH = 6;

    private ProjectionSymbol() {}

    /** Its marks, axis along the frame's base line. */
    public static List<Mark> firstAngle(Local frame, double h) {
        Local at = frame.moved(0.5 * h, 0);
        return List.of(
                new Mark.Stroke(LineStyle.SYMBOL, Ink.INK, at.round(0, -0.5 * h, 2 * h, -h, 2 * h, h, 0, 0.5 * h)),
                new Mark.Circle(LineStyle.SYMBOL, Ink.INK, at.at(4 * h, 0), 0.5 * h),
                new Mark.Circle(LineStyle.SYMBOL, Ink.INK, at.at(4 * h, 0), h),
                new Mark.Line(LineStyle.NARROW, Ink.INK, at.at(-0.5 * h, 0), at.at(2.5 * h, 0)),
                new Mark.Line(LineStyle.NARROW, Ink.INK, at.at(2.7 * h, 0), at.at(5.3 * h, 0)),
                new Mark.Line(LineStyle.NARROW, Ink.INK, at.at(4 * h, -1.3 * h), at.at(4 * h, 1.3 * h)));
    }
}
