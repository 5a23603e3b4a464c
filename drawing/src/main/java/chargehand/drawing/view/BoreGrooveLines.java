package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.part.shape.Profile;
import java.util.ArrayList;
import java.util.List;

/**
 * A keyway or an oil groove along a bore, in the side view of a part that is cut. Lengths are on paper (mm), heights from the
 * axis.
 */
final class BoreGrooveLines {
    private final AcrossLines lines;
    private final Look look;
    private final BoreGroove groove;
    private final double from;
    private final double to;
    private final double half;
    private final double floor;
    private final double edge;

    BoreGrooveLines(Look look, BoreGroove groove, AcrossLines lines) {
        this.lines = lines;
        this.look = look;
        this.groove = groove;
        from = look.scale().x(groove.from());
        to = look.scale().x(groove.to());
        half = look.scale().size(groove.width()) / 2;
        floor = look.scale().size(groove.floor());
        double radius = look.scale().size(groove.radius());
        edge = Math.sqrt(Math.max(0, radius * radius - half * half));
    }

    static void draw(Look look, AcrossLines lines) {
        look.body()
                .ifPresent(body -> BoreGroove.of(body, look.solid()).forEach(groove -> {
                    int before = lines.pencil.marks().size();
                    new BoreGrooveLines(look, groove, lines).draw(Bearing.of(groove.feature(), look.turn()));
                    lines.quieten(groove.feature(), before);
                }));
    }

    private void draw(Bearing bearing) {
        if (bearing.isUp() || bearing.isDown()) {
            Side side = bearing.isUp() ? Side.ABOVE : Side.BELOW;
            if (side.isCut(look.cut())) {
                cut(side);
            } else {
                hidden(side);
            }
        } else if (bearing.towards() < 0) {
            for (Side side : Side.values()) {
                if (side.isCut(look.cut())) {
                    onFarWall(bearing, side);
                }
            }
        }
    }

    /** Cut through its middle: its floor, and beyond it the edge where its far side meets the bore. */
    private void cut(Side side) {
        lines.openings.add(new Opening(side, true, from, to));
        lines.pencil.line(LineStyle.WIDE, at(side, from, floor), at(side, to, floor));
        ends(side, edge, floor);
        List<Point> wall = new ArrayList<>();
        Profile hollow = look.solid().innerAtMost().cut(groove.from(), groove.to());
        Contour.above(hollow, look.scale())
                .forEach(point -> wall.add(new Point(point.x(), -side.outward() * point.y())));
        lines.pencil.line(
                LineStyle.WIDE, Contour.thinned(wall.stream().map(this::beside).toList()));
        wall.add(at(side, to, floor));
        wall.add(at(side, from, floor));
        lines.cutOuts.add(wall);
    }

    /** Where the groove's far side meets the bore, for a point of the bore's wall. */
    private Point beside(Point wall) {
        double chord = Math.sqrt(Math.max(0, wall.y() * wall.y() - half * half));
        return new Point(wall.x(), Math.signum(wall.y()) * chord);
    }

    /** In the half that is not cut: its floor alone, since no other view shows how far it goes. */
    private void hidden(Side side) {
        Point begin = at(side, from, floor);
        Point end = at(side, to, floor);
        lines.pencil.line(LineStyle.HIDDEN, List.of(at(side, from, edge), begin, end, at(side, to, edge)));
    }

    /** Its two edges on the wall behind, as far as they lie in a half that is cut. */
    private void onFarWall(Bearing bearing, Side side) {
        double one = edge * bearing.up() + half * bearing.towards();
        double other = edge * bearing.up() - half * bearing.towards();
        double low = Math.max(0, -side.outward() * Math.min(one, other));
        double high = Math.max(0, -side.outward() * Math.max(one, other));
        for (double height : new double[] {low, high}) {
            if (height > 0) {
                lines.pencil.line(LineStyle.WIDE, at(side, from, height), at(side, to, height));
            }
        }
        ends(side, low, high);
    }

    /** The ends that lie within the part. */
    private void ends(Side side, double near, double far) {
        if (groove.from().isPositive()) {
            lines.pencil.line(LineStyle.WIDE, at(side, from, near), at(side, from, far));
        }
        if (groove.to().isLessThan(look.solid().length())) {
            lines.pencil.line(LineStyle.WIDE, at(side, to, near), at(side, to, far));
        }
    }

    private static Point at(Side side, double x, double height) {
        return new Point(x, side.outward() * height);
    }
}
