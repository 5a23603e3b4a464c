package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.shape.Profile;
import java.util.List;

/** One flat on a round part in the side view. Lengths are on paper (mm), heights from the axis. */
final class FlatLines {
    private final AcrossLines lines;
    private final Cut cut;
    private final double from;
    private final double to;
    private final double height;
    private final double half;

    FlatLines(Look look, Across.Flat flat, AcrossLines lines) {
        this.lines = lines;
        cut = look.cut();
        from = look.scale().x(flat.begins());
        to = look.scale().x(flat.ends());
        Length radius = radius(flat, look.solid().outer());
        double outer = look.scale().size(radius);
        height = look.scale().size(flat.depth().height(radius));
        half = Math.sqrt(Math.max(0, outer * outer - height * height));
    }

    /** The radius from which a flat is measured: the largest that it lies on. */
    private static Length radius(Across.Flat flat, Profile outer) {
        return outer.most(flat.begins(), flat.ends());
    }

    /** The outer profile as it is seen from the side, brought down to the flats that lie at its top or bottom. */
    static Profile seen(Profile profile, Look look, Side side) {
        Profile seen = profile;
        for (Across feature : look.solid().across()) {
            Bearing bearing = Bearing.of(feature, look.turn());
            boolean onEdge = side == Side.ABOVE ? bearing.isUp() : bearing.isDown();
            if (onEdge && feature instanceof Across.Flat flat) {
                Length height = flat.depth().height(radius(flat, look.solid().outer()));
                Length most = Length.most(height, Length.ZERO);
                Profile level = Profile.level(flat.begins(), flat.ends(), most);
                seen = seen.spliced(seen.cut(flat.begins(), flat.ends()).smaller(level));
            }
        }
        return seen;
    }

    /** Its outline where it faces the viewer or lies aslant, with crossed diagonals where it is seen square on. */
    void draw(Bearing bearing) {
        if (bearing.isTowards() && cut == Cut.NONE) {
            lines.pencil.closed(LineStyle.WIDE, box(-half, half));
            lines.pencil.line(LineStyle.NARROW, new Point(from, half), new Point(to, -half));
            lines.pencil.line(LineStyle.NARROW, new Point(from, -half), new Point(to, half));
        } else if (bearing.isTowards()) {
            upperHalf();
        } else if (!bearing.isUp() && !bearing.isDown() && bearing.towards() > 0) {
            aslant(bearing, LineStyle.WIDE);
        } else if (!bearing.isUp() && !bearing.isDown() && cut == Cut.NONE) {
            aslant(bearing, LineStyle.HIDDEN);
        }
    }

    /** Down to the axis, below which the part is cut. */
    private void upperHalf() {
        Point axisFrom = new Point(from, 0);
        Point axisTo = new Point(to, 0);
        lines.pencil.line(LineStyle.WIDE, List.of(axisFrom, new Point(from, -half), new Point(to, -half), axisTo));
        lines.pencil.line(LineStyle.NARROW, axisFrom, new Point(to, -half));
        lines.pencil.line(LineStyle.NARROW, axisTo, new Point(from, -half));
    }

    private void aslant(Bearing bearing, LineStyle style) {
        double one = height * bearing.up() + half * bearing.towards();
        double other = height * bearing.up() - half * bearing.towards();
        if (cut == Cut.NONE || Math.min(one, other) >= 0) {
            lines.pencil.closed(style, box(Math.min(one, other), Math.max(one, other)));
        }
    }

    private List<Point> box(double low, double high) {
        return List.of(new Point(from, -high), new Point(to, -high), new Point(to, -low), new Point(from, -low));
    }
}
