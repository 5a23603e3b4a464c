package chargehand.drawing.dxf;

import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.List;

/** One thing that stays in the file, still in millimetres on the sheet. */
sealed interface Drawn {
    Layer layer();

    /** A line of any shape. */
    record Line(Layer layer, LineType type, Chain chain) implements Drawn {}

    /** A filled area of three or four corners, in order round it. */
    record Filled(Layer layer, List<Point> corners) implements Drawn {}

    /** A filled circle. */
    record Dot(Layer layer, Point centre, double radius) implements Drawn {}

    /** Words. */
    record Words(Layer layer, Mark.Words words) implements Drawn {}
}
