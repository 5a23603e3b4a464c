package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/** Collects the lines of a view; a line without length is not drawn. */
final class Pencil {
    private static final double LEAST = 1e-6;

    private final List<Mark> marks = new ArrayList<>();

    void line(LineStyle style, Point from, Point to) {
        if (from.distance(to) > LEAST) {
            marks.add(new Mark.Line(style, Ink.INK, from, to));
        }
    }

    void line(LineStyle style, List<Point> points) {
        if (points.size() == 2) {
            line(style, points.getFirst(), points.getLast());
        } else if (points.size() > 2) {
            marks.add(new Mark.Stroke(style, Ink.INK, Path.through(points)));
        }
    }

    void closed(LineStyle style, List<Point> points) {
        marks.add(new Mark.Stroke(style, Ink.INK, Path.round(points)));
    }

    void put(Mark mark) {
        marks.add(mark);
    }

    void putAll(List<Mark> more) {
        marks.addAll(more);
    }

    /** Takes these marks in place of all there were. */
    void replace(List<Mark> others) {
        marks.clear();
        marks.addAll(others);
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }
}
