package chargehand.drawing.view;

import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.End;
import java.util.List;

/** Where things lie in the view from one end, the axis at the origin. */
record EndFrame(Look look, End from) {
    static final Point AXIS = new Point(0, 0);

    double size(Length length) {
        return look.scale().size(length);
    }

    /** The end face's position along the axis. */
    Length face() {
        return from == End.A ? Length.ZERO : look.solid().length();
    }

    /** The direction on paper of what lies at an angle round the axis of the part. */
    double direction(double around) {
        return EndView.direction(look, around, from);
    }

    /** How far out something so far off the middle meets a circle (mm). */
    double chord(Length radius, double off) {
        return Math.sqrt(Math.max(0, Math.pow(size(radius), 2) - off * off));
    }

    /** Points given outward along a direction (x) and square to it (y), on paper. */
    static List<Point> turned(double direction, List<Point> points) {
        return points.stream()
                .map(point -> AXIS.towards(direction, point.x()).towards(direction - 90, point.y()))
                .toList();
    }

    /** A band along a direction from one distance to another. */
    static List<Point> band(double direction, double near, double far, double half) {
        return turned(
                direction,
                List.of(new Point(near, -half), new Point(far, -half), new Point(far, half), new Point(near, half)));
    }
}
