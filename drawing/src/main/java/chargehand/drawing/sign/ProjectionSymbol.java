package chargehand.drawing.sign;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.part.Projection;
import java.util.List;

/**
 * The symbol that says how views stand (ISO 5456-2; proportions from memory): a frustum with its small end left, and its end
 * view as both circles are seen. In first angle that stands at the right, in third angle at the left.
 */
public final class ProjectionSymbol {
    /** How wide it is, in lettering heights. */
    public static final double WIDTH = 6;

    private ProjectionSymbol() {}

    /**
     * Its marks, axis along the frame's base line.
     *
     * @param h lettering height (mm); it is twice as high
     */
    public static List<Mark> marks(Local frame, double h, Projection projection) {
        return switch (projection) {
            case FIRST_ANGLE -> marks(frame.moved(0.5 * h, 0), frame.moved(4.5 * h, 0), h);
            case THIRD_ANGLE -> marks(frame.moved(3.5 * h, 0), frame.moved(1.5 * h, 0), h);
        };
    }

    /** The frustum from its small end on, and the circles round their centre. */
    private static List<Mark> marks(Local small, Local centre, double h) {
        return List.of(
                new Mark.Stroke(LineStyle.SYMBOL, Ink.INK, small.round(0, -0.5 * h, 2 * h, -h, 2 * h, h, 0, 0.5 * h)),
                new Mark.Circle(LineStyle.SYMBOL, Ink.INK, centre.origin(), 0.5 * h),
                new Mark.Circle(LineStyle.SYMBOL, Ink.INK, centre.origin(), h),
                new Mark.Line(LineStyle.NARROW, Ink.INK, small.at(-0.5 * h, 0), small.at(2.5 * h, 0)),
                new Mark.Line(LineStyle.NARROW, Ink.INK, centre.at(-1.3 * h, 0), centre.at(1.3 * h, 0)),
                new Mark.Line(LineStyle.NARROW, Ink.INK, centre.at(0, -1.3 * h), centre.at(0, 1.3 * h)));
    }
}
