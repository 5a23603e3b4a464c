package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import java.util.ArrayList;
import java.util.List;

/** A hole across a turned part, in its side view. Lengths are on paper (mm), heights from the axis. */
final class HoleLines {
    private static final double OVERRUN = 2;
    private static final int CHORDS = 36;
    private static final double POINT = 1 / Math.tan(Math.toRadians(59));

    private final AcrossLines lines;
    private final Look look;
    private final Length at;
    private final Cut cut;
    private final double x;
    private final double half;
    private final double outer;
    private final double inner;
    private final double bottom;
    private final boolean through;

    HoleLines(Look look, Across.CrossHole hole, AcrossLines lines) {
        this.lines = lines;
        this.look = look;
        at = hole.at().length();
        cut = look.cut();
        x = look.scale().x(hole.at().length());
        half = look.scale().size(hole.diameter().length()) / 2;
        outer = look.scale().size(look.solid().outer().radiusBefore(hole.at().length()));
        inner = look.scale().size(look.solid().inner().radiusBefore(hole.at().length()));
        through = hole.depth() instanceof Depth.Through;
        bottom = switch (hole.depth()) {
            case Depth.Through() -> -outer;
            case Depth.Blind(var depth) -> outer - look.scale().size(depth.length());
        };
    }

    void draw(Bearing bearing) {
        mouth(bearing);
        if (through) {
            mouth(bearing.opposite());
        }
        if (bearing.isUp()) {
            shaft(Side.ABOVE);
        } else if (bearing.isDown()) {
            shaft(Side.BELOW);
        }
        centreLines(bearing);
    }

    private void centreLines(Bearing bearing) {
        double middle = outer * bearing.up();
        double reach = Math.abs(bearing.towards()) * half + OVERRUN;
        boolean upright = bearing.isUp() || bearing.isDown();
        double far = upright ? (through ? -middle : bottom * bearing.up()) : middle;
        double top = Math.min(-middle, -far) - reach;
        double low = Math.max(-middle, -far) + reach;
        if (bearing.isTowards() || upright || bearing.towards() > 0 || through) {
            lines.pencil.line(LineStyle.CHAIN, new Point(x, top), new Point(x, low));
        }
    }

    /** Where the hole comes out at the outside. */
    private void mouth(Bearing bearing) {
        if (bearing.isUp() || bearing.isDown()) {
            Side side = bearing.isUp() ? Side.ABOVE : Side.BELOW;
            saddle(side, false, outer);
            return;
        }
        if (bearing.isAway() && cut != Cut.NONE && inner >= half) {
            farWall();
            return;
        }
        boolean hidden = bearing.towards() < 0;
        if (hidden && (through || cut != Cut.NONE)) {
            return;
        }
        if (bearing.isTowards() && cut == Cut.HALF && inner < half) {
            lines.pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, new Point(x, 0), half));
            lines.cutOuts.add(
                    rim(bearing).stream().filter(point -> point.y() > -1e-9).toList());
            return;
        }
        if (bearing.isTowards() && cut == Cut.FULL && inner < half) {
            lines.pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, new Point(x, 0), half));
            lines.cutOuts.add(
                    rim(bearing).stream().filter(point -> point.y() > -1e-9).toList());
            lines.cutOuts.add(
                    rim(bearing).stream().filter(point -> point.y() < 1e-9).toList());
            return;
        }
        for (List<Point> run : seen(rim(bearing))) {
            lines.pencil.line(hidden ? LineStyle.HIDDEN : LineStyle.WIDE, run);
        }
    }

    /** Where a hole comes out of the far wall of the bore, as far as the cut lets one look there. */
    private void farWall() {
        if (cut == Cut.FULL) {
            lines.pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, new Point(x, 0), half));
            return;
        }
        Path below =
                new Path(new Point(x + half, 0), List.of(new Path.Bend(new Point(x - half, 0), half, true)), false);
        lines.pencil.put(new Mark.Stroke(LineStyle.WIDE, Ink.INK, below));
    }

    /** The rim on the outside: where the hole's cylinder meets the part's. */
    private List<Point> rim(Bearing bearing) {
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i <= CHORDS; i++) {
            double turn = 2 * Math.PI * i / CHORDS;
            double sideways = half * Math.sin(turn);
            double rise = Math.sqrt(Math.max(0, outer * outer - sideways * sideways));
            double height = rise * bearing.up() - sideways * bearing.towards();
            rim.add(new Point(x + half * Math.cos(turn), -height));
        }
        return rim;
    }

    /** The runs of a line that lie in a half that is not cut. */
    private List<List<Point>> seen(List<Point> line) {
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (Point point : line) {
            boolean cutAway = point.y() > 1e-9 ? cut.below() : point.y() < -1e-9 && cut.above();
            if (cutAway) {
                if (run.size() > 1) {
                    runs.add(List.copyOf(run));
                }
                run.clear();
            } else {
                run.add(point);
            }
        }
        if (run.size() > 1) {
            runs.add(run);
        }
        return runs;
    }

    /** Where the hole comes out at the top or bottom of the view, or into the bore: its far rim dips to the axis. */
    private void saddle(Side side, boolean inside, double radius) {
        lines.openings.add(new Opening(side, inside, x - half, x + half));
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i <= CHORDS / 2; i++) {
            double along = half * (4.0 * i / CHORDS - 1);
            double sideways = Math.sqrt(Math.max(0, half * half - along * along));
            double height = Math.sqrt(Math.max(0, radius * radius - sideways * sideways));
            rim.add(new Point(x + along, side.outward() * height));
        }
        lines.pencil.line(LineStyle.WIDE, Contour.thinned(rim));
    }

    /** The walls of a hole that goes up or down from the outside. */
    private void shaft(Side side) {
        LineStyle style = side.isCut(cut) ? LineStyle.WIDE : LineStyle.HIDDEN;
        if (cut == Cut.NONE) {
            walls(side, style, outer, bottom);
            return;
        }
        if (side.isCut(cut)) {
            cutShaft(side, Math.max(bottom, inner(side)));
        }
        if (through && side.other().isCut(cut)) {
            cutShaft(side.other(), inner(side.other()));
        }
    }

    /** Where the hole comes out within the part: at the wall of the bore, or at the floor of a groove along it. */
    private double inner(Side side) {
        return look.body().stream()
                .flatMap(body -> BoreGroove.of(body, look.solid()).stream())
                .filter(groove -> !at.isLessThan(groove.from()) && !at.isMoreThan(groove.to()))
                .filter(groove -> {
                    Bearing bearing = Bearing.of(groove.feature(), look.turn());
                    return side == Side.ABOVE ? bearing.isUp() : bearing.isDown();
                })
                .mapToDouble(groove -> look.scale().size(groove.floor()))
                .reduce(inner, Math::max);
    }

    private void cutShaft(Side side, double floor) {
        double least = Math.max(0, floor);
        walls(side, LineStyle.WIDE, outer, least);
        lines.cutOuts.add(
                List.of(at(side, -half, outer), at(side, half, outer), at(side, half, least), at(side, -half, least)));
        if (inner > 0 && floor <= inner && inner(side) <= inner) {
            saddle(side, true, inner);
        }
    }

    private void walls(Side side, LineStyle style, double from, double to) {
        lines.pencil.line(style, at(side, -half, from), at(side, -half, to));
        lines.pencil.line(style, at(side, half, from), at(side, half, to));
        boolean blind = !through && to >= bottom && to > inner;
        if (blind) {
            lines.pencil.line(style, at(side, -half, to), at(side, half, to));
            Point tip = at(side, 0, to - half * POINT);
            lines.pencil.line(style, List.of(at(side, -half, to), tip, at(side, half, to)));
        }
    }

    private Point at(Side side, double along, double height) {
        return new Point(x + along, side.outward() * height);
    }
}
