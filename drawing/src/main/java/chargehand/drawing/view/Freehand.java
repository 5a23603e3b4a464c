package chargehand.drawing.view;

import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/** Makes the straight lines of a break look drawn by hand: corners rounded, a little wavy, the same every time. */
final class Freehand {
    /** From point to point along the line (mm). */
    private static final double STEP = 0.8;

    /** How many steps on either side are taken together to round corners. */
    private static final int ROUNDING = 4;

    private static final double SWAY = 0.55;
    private static final double SWAY_PITCH = 13;
    private static final double QUIVER = 0.22;
    private static final double QUIVER_PITCH = 8.1;

    private Freehand() {}

    /** A closed line round these corners. */
    static List<Point> round(List<Point> corners) {
        List<Point> closed = new ArrayList<>(corners);
        closed.add(corners.getFirst());
        List<Point> dense = dense(closed);
        dense.removeLast();
        List<Point> smooth = new ArrayList<>();
        for (int i = 0; i < dense.size(); i++) {
            smooth.add(mean(dense, i));
        }
        return wavy(smooth, true);
    }

    /** A straight line from one point to another. */
    static List<Point> straight(Point from, Point to) {
        return wavy(dense(List.of(from, to)), false);
    }

    private static List<Point> dense(List<Point> line) {
        List<Point> dense = new ArrayList<>();
        for (int i = 1; i < line.size(); i++) {
            Point from = line.get(i - 1);
            Point to = line.get(i);
            int steps = Math.max(1, (int) Math.round(from.distance(to) / STEP));
            for (int step = 0; step < steps; step++) {
                dense.add(from.between(to, (double) step / steps));
            }
        }
        dense.add(line.getLast());
        return dense;
    }

    private static Point mean(List<Point> round, int middle) {
        double x = 0;
        double y = 0;
        for (int i = middle - ROUNDING; i <= middle + ROUNDING; i++) {
            Point point = round.get(Math.floorMod(i, round.size()));
            x += point.x();
            y += point.y();
        }
        int count = 2 * ROUNDING + 1;
        return new Point(x / count, y / count);
    }

    /** Every point moved square to the line; the waves come from how far along it lies. */
    private static List<Point> wavy(List<Point> line, boolean closed) {
        List<Point> wavy = new ArrayList<>();
        int size = line.size();
        for (int i = 0; i < size; i++) {
            Point before = line.get(closed ? Math.floorMod(i - 1, size) : Math.max(0, i - 1));
            Point after = line.get(closed ? (i + 1) % size : Math.min(size - 1, i + 1));
            double length = Math.max(1e-9, before.distance(after));
            double off = wave(i * STEP);
            wavy.add(line.get(i)
                    .moved(off * (after.y() - before.y()) / length, -off * (after.x() - before.x()) / length));
        }
        return wavy;
    }

    private static double wave(double along) {
        return SWAY * Math.sin(2 * Math.PI * along / SWAY_PITCH)
                + QUIVER * Math.sin(2 * Math.PI * along / QUIVER_PITCH + 1);
    }
}
