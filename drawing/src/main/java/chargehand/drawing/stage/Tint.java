package chargehand.drawing.stage;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/** Collects the shapes of a holding: outlined, in the quiet tint. */
final class Tint {
    private final List<Mark> marks = new ArrayList<>();

    /** An upright box between two corners. */
    Tint box(double left, double top, double right, double bottom) {
        return shape(List.of(
                new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom)));
    }

    /** The same box above the axis and below it, its sides given as distances from the axis. */
    Tint pair(double left, double right, double near, double far) {
        box(left, -far, right, -near);
        return box(left, near, right, far);
    }

    Tint shape(List<Point> corners) {
        Path path = Path.round(corners);
        marks.add(new Mark.Fill(Ink.QUIET, path));
        marks.add(new Mark.Stroke(LineStyle.WIDE, Ink.INK, path));
        return this;
    }

    Tint line(Point from, Point to) {
        marks.add(new Mark.Line(LineStyle.NARROW, Ink.INK, from, to));
        return this;
    }

    /** A thin sheet seen on edge: one heavy line. */
    Tint sheet(Point from, Point to) {
        marks.add(new Mark.Line(LineStyle.HEAVY, Ink.INK, from, to));
        return this;
    }

    List<Mark> marks() {
        return marks;
    }
}
