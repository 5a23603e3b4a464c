package chargehand.drawing.pdf;

import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A cubic curve from where the pen is. An arc becomes one curve for each quarter turn or less, which lies within 0.03 % of
 * the radius of the true arc.
 *
 * @param leave the point it leaves towards
 * @param arrive the point it arrives from
 * @param to its end
 */
record Curve(Point leave, Point arrive, Point to) {
    private static final double QUARTER = Math.PI / 2;

    /** The curves for an arc that begins at {@code from}. */
    static List<Curve> of(Point from, Path.Bend bend) {
        Point centre = centre(from, bend);
        double begin = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
        double end = Math.atan2(bend.to().y() - centre.y(), bend.to().x() - centre.x());
        double sweep = sweep(begin, end, bend.clockwise());
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / QUARTER - 1e-6));
        List<Curve> curves = new ArrayList<>();
        for (int piece = 0; piece < pieces; piece++) {
            double start = begin + sweep * piece / pieces;
            curves.add(piece(centre, bend.radius(), start, sweep / pieces));
        }
        return curves;
    }

    /** The angle from begin to end, clockwise on paper being positive because y points down. */
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

    private static Curve piece(Point centre, double radius, double start, double sweep) {
        double reach = radius * 4 / 3 * Math.tan(sweep / 4);
        double end = start + sweep;
        Point from = centre.moved(radius * Math.cos(start), radius * Math.sin(start));
        Point to = centre.moved(radius * Math.cos(end), radius * Math.sin(end));
        return new Curve(
                from.moved(-reach * Math.sin(start), reach * Math.cos(start)),
                to.moved(reach * Math.sin(end), -reach * Math.cos(end)),
                to);
    }
}
