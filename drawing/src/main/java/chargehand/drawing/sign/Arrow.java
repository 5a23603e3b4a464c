package chargehand.drawing.sign;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.List;

/** The filled arrow of dimension lines and leaders. */
public final class Arrow {
    /** How long it is (mm). */
    public static final double LENGTH = 3.5;

    private static final double HALF_WIDTH = 0.6;

    private Arrow() {}

    /** An arrow whose tip is at a point and which points in a direction (degrees, 0 to the right, anticlockwise). */
    public static Mark at(Point tip, double direction) {
        Point heel = tip.towards(direction, -LENGTH);
        return new Mark.Fill(
                Ink.INK,
                Path.round(List.of(
                        tip, heel.towards(direction + 90, HALF_WIDTH), heel.towards(direction - 90, HALF_WIDTH))));
    }
}
