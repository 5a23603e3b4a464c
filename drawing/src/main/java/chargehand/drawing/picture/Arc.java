package chargehand.drawing.picture;

/**
 * A part of a circle by its centre. Angles are in radians from the right and grow clockwise as seen, since y points down.
 *
 * @param centre of the circle
 * @param radius of the circle (mm)
 * @param start where it begins
 * @param sweep how far it goes round, negative anticlockwise
 */
public record Arc(Point centre, double radius, double start, double sweep) {
    /** The arc of a bend that begins at {@code from}. */
    public static Arc of(Point from, Path.Bend bend) {
        Point centre = centre(from, bend);
        double begin = angle(centre, from);
        return new Arc(centre, bend.radius(), begin, sweep(begin, angle(centre, bend.to()), bend.clockwise()));
    }

    /** All of a circle, clockwise from its right. */
    public static Arc round(Point centre, double radius) {
        return new Arc(centre, radius, 0, 2 * Math.PI);
    }

    private static double angle(Point centre, Point to) {
        return Math.atan2(to.y() - centre.y(), to.x() - centre.x());
    }

    private static double sweep(double begin, double end, boolean clockwise) {
        double sweep = end - begin;
        if (clockwise && sweep <= 0) {
            return sweep + 2 * Math.PI;
        }
        return !clockwise && sweep >= 0 ? sweep - 2 * Math.PI : sweep;
    }

    private static Point centre(Point from, Path.Bend bend) {
        double chord = from.distance(bend.to());
        double off = Math.sqrt(Math.max(0, bend.radius() * bend.radius() - chord * chord / 4));
        double side = bend.clockwise() ? 1 : -1;
        Point middle = from.between(bend.to(), 0.5);
        double dx = (bend.to().x() - from.x()) / chord;
        double dy = (bend.to().y() - from.y()) / chord;
        return middle.moved(-side * off * dy, side * off * dx);
    }

    /** The point a part of the way along it: 0 its begin, 1 its end. */
    public Point at(double part) {
        double angle = start + part * sweep;
        return centre.moved(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    /** The piece between two parts of its way. */
    public Arc piece(double from, double to) {
        return new Arc(centre, radius, start + from * sweep, (to - from) * sweep);
    }
}
