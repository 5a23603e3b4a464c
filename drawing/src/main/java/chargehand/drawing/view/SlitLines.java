package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.part.Across;
import chargehand.part.shape.Profile;
import java.util.ArrayList;
import java.util.List;

/** A slit along a turned part in the side view. Lengths are on paper (mm), heights from the axis. */
final class SlitLines {
    private final AcrossLines lines;
    private final Look look;
    private final Across.Slit slit;
    private final double from;
    private final double to;
    private final double half;
    private final double outer;

    SlitLines(Look look, Across.Slit slit, AcrossLines lines) {
        this.lines = lines;
        this.look = look;
        this.slit = slit;
        from = look.scale().x(slit.begins());
        to = look.scale().x(slit.ends());
        half = look.scale().size(slit.wide()) / 2;
        outer = look.scale().size(look.solid().outer().most(slit.begins(), slit.ends()));
    }

    void draw(Bearing bearing) {
        one(bearing);
        if (slit.walls() == Across.Walls.BOTH) {
            one(bearing.opposite());
        }
    }

    private void one(Bearing bearing) {
        if (bearing.isUp() || bearing.isDown()) {
            onEdge(bearing.isUp() ? Side.ABOVE : Side.BELOW);
        } else if (bearing.towards() > 0) {
            seen(bearing, LineStyle.WIDE);
        } else if (look.cut() == Cut.NONE) {
            seen(bearing, LineStyle.HIDDEN);
        }
    }

    /** In the plane of the paper: its ends; where the part is cut there, no hatching, since the saw was there already. */
    private void onEdge(Side side) {
        LineStyle style = side.isCut(look.cut()) ? LineStyle.WIDE : LineStyle.HIDDEN;
        List<Point> outside = along(look.solid().outer(), side);
        List<Point> inside = along(look.solid().innerAtMost(), side);
        lines.pencil.line(style, inside.getFirst(), outside.getFirst());
        lines.pencil.line(style, inside.getLast(), outside.getLast());
        if (side.isCut(look.cut())) {
            List<Point> open = new ArrayList<>(outside);
            open.addAll(inside.reversed());
            lines.cutOuts.add(open);
        }
    }

    private List<Point> along(Profile profile, Side side) {
        return profile.cut(slit.begins(), slit.ends()).stations().stream()
                .map(station -> side.at(look.scale(), station.at(), station.radius()))
                .toList();
    }

    /** Its two edges along the outside and its ends. */
    private void seen(Bearing bearing, LineStyle style) {
        double rise = Math.sqrt(Math.max(0, outer * outer - half * half));
        double one = rise * bearing.up() + half * bearing.towards();
        double other = rise * bearing.up() - half * bearing.towards();
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (look.cut() == Cut.NONE || low >= 0) {
            lines.pencil.closed(
                    style,
                    List.of(new Point(from, -high), new Point(to, -high), new Point(to, -low), new Point(from, -low)));
        } else if (high > 0) {
            lines.pencil.line(
                    style, List.of(new Point(from, 0), new Point(from, -high), new Point(to, -high), new Point(to, 0)));
        }
    }
}
