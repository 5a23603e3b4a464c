package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Hatches what is cut: lines at 45°, the same pitch in every view, so that pieces of one part match. Where outlines overlap
 * an odd number of times is cut; a hole's outline within the part's takes it out again.
 */
final class Hatching {
    /** From line to line (mm). */
    private static final double PITCH = 2.5;

    private static final double STEP = PITCH * Math.sqrt(2);

    /** Shorter pieces are dust (mm). */
    private static final double LEAST = 0.2;

    private Hatching() {}

    /** The hatching of the area within closed outlines. */
    static List<Mark> of(List<List<Point>> outlines) {
        double from = outlines.stream()
                .flatMap(List::stream)
                .mapToDouble(Hatching::line)
                .min()
                .orElse(0);
        double to = outlines.stream()
                .flatMap(List::stream)
                .mapToDouble(Hatching::line)
                .max()
                .orElse(0);
        List<Mark> marks = new ArrayList<>();
        for (long number = (long) Math.ceil(from / STEP); number * STEP < to; number++) {
            addLine(outlines, number * STEP, marks);
        }
        return marks;
    }

    /** Lines of hatching are those on which x + y is the same. */
    private static double line(Point point) {
        return point.x() + point.y();
    }

    private static void addLine(List<List<Point>> outlines, double line, List<Mark> marks) {
        List<Double> crossings = new ArrayList<>();
        for (List<Point> outline : outlines) {
            for (int i = 0; i < outline.size(); i++) {
                addCrossing(outline.get(i), outline.get((i + 1) % outline.size()), line, crossings);
            }
        }
        crossings.sort(null);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double enter = crossings.get(i);
            double leave = crossings.get(i + 1);
            if (leave - enter > LEAST) {
                marks.add(new Mark.Line(
                        LineStyle.HATCH, Ink.INK, new Point(enter, line - enter), new Point(leave, line - leave)));
            }
        }
    }

    /** Adds the x where an edge crosses a line, its first end counted and its last one not. */
    private static void addCrossing(Point from, Point to, double line, List<Double> crossings) {
        double before = line(from) - line;
        double after = line(to) - line;
        if (before < 0 != after < 0) {
            crossings.add(from.x() + (to.x() - from.x()) * before / (before - after));
        }
    }
}
