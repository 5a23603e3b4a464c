package chargehand.drawing.pdf;

import chargehand.drawing.picture.Arc;
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
        Arc arc = Arc.of(from, bend);
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / QUARTER - 1e-6));
        List<Curve> curves = new ArrayList<>();
        for (int piece = 0; piece < pieces; piece++) {
            double start = arc.start() + arc.sweep() * piece / pieces;
            curves.add(piece(arc.centre(), arc.radius(), start, arc.sweep() / pieces));
        }
        return curves;
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
