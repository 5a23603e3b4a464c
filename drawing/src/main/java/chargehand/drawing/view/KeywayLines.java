package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.part.Across;
import java.util.List;

/** A keyway with round ends in the side view of a turned part. Lengths are on paper (mm), heights from the axis. */
final class KeywayLines {
    private final AcrossLines lines;
    private final Cut cut;
    private final double from;
    private final double to;
    private final double half;
    private final double outer;
    private final double depth;

    KeywayLines(Look look, Across.Keyway keyway, AcrossLines lines) {
        this.lines = lines;
        cut = look.cut();
        from = look.scale().x(keyway.from().length());
        to = look.scale().x(keyway.from().length().plus(keyway.length().length()));
        half = look.scale().size(keyway.width().length()) / 2;
        outer = look.scale().size(look.solid().outer().radiusAfter(keyway.from().length()));
        depth = look.scale().size(keyway.depth().length());
    }

    void draw(Bearing bearing) {
        if (bearing.isTowards() && cut == Cut.NONE) {
            lines.pencil.put(new Mark.Stroke(LineStyle.WIDE, Ink.INK, slot()));
        } else if (bearing.isUp() || bearing.isDown()) {
            notch(bearing.isUp() ? Side.ABOVE : Side.BELOW);
        } else if (bearing.towards() > 0) {
            oblique(bearing, LineStyle.WIDE);
        } else if (cut == Cut.NONE) {
            oblique(bearing, LineStyle.HIDDEN);
        }
    }

    /** Seen square on: two sides and two round ends. */
    private Path slot() {
        double left = from + half;
        double right = to - half;
        return new Path(
                new Point(left, -half),
                List.of(
                        new Path.Straight(new Point(right, -half)),
                        new Path.Bend(new Point(right, half), half, true),
                        new Path.Straight(new Point(left, half)),
                        new Path.Bend(new Point(left, -half), half, true)),
                true);
    }

    /** At the top or bottom of the view: its floor, and beyond it the edge where its far side meets the outside. */
    private void notch(Side side) {
        LineStyle style = side.isCut(cut) ? LineStyle.WIDE : LineStyle.HIDDEN;
        double floor = outer - depth;
        double edge = Math.sqrt(Math.max(0, outer * outer - half * half));
        lines.openings.add(new Opening(side, false, from, to));
        lines.pencil.line(LineStyle.WIDE, at(side, from, edge), at(side, to, edge));
        lines.pencil.line(LineStyle.WIDE, at(side, from, outer), at(side, from, edge));
        lines.pencil.line(LineStyle.WIDE, at(side, to, outer), at(side, to, edge));
        lines.pencil.line(
                style, List.of(at(side, from, edge), at(side, from, floor), at(side, to, floor), at(side, to, edge)));
        if (side.isCut(cut)) {
            lines.cutOuts.add(
                    List.of(at(side, from, outer), at(side, from, floor), at(side, to, floor), at(side, to, outer)));
        }
    }

    /** Seen aslant: the two edges along the outside. */
    private void oblique(Bearing bearing, LineStyle style) {
        double rise = Math.sqrt(Math.max(0, outer * outer - half * half));
        double one = rise * bearing.up() + half * bearing.towards();
        double other = rise * bearing.up() - half * bearing.towards();
        if (cut != Cut.NONE && Math.min(one, other) < 0) {
            return;
        }
        lines.pencil.closed(
                style,
                List.of(new Point(from, -one), new Point(to, -one), new Point(to, -other), new Point(from, -other)));
    }

    private static Point at(Side side, double x, double height) {
        return new Point(x, side.outward() * height);
    }
}
