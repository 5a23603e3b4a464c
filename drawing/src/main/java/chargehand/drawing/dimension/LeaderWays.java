package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.Local;
import java.util.ArrayList;
import java.util.List;

/**
 * The ways a leader can run from what it points at to its label: at 60° rather than 45 or 75, never upright or level,
 * with a short shelf at the label.
 *
 * @param label what stands at its end
 * @param base what a leader costs before its length
 */
record LeaderWays(Label label, double base) {
    private static final List<Integer> ANGLES = List.of(60, 45, 75);
    private static final double SHELF = 3;
    private static final double CLEAR = 1;
    private static final double PER_MM = 0.35;
    private static final double PER_ANGLE = 1.5;
    private static final double LEFTWARD = 0.5;
    private static final List<Double> LEVELS = List.of(6.0, 11.0, 16.0, 22.0, 28.0, 35.0, 43.0);

    /** Beside what stands out further elsewhere, a callout may stand nearer (mm beyond the furthest). */
    private static final List<Double> NEAR = List.of(1.0, -4.0, -9.0);

    /** A leader rises at least so much (mm). */
    private static final double LEAST_RISE = 4.5;

    /**
     * From points on an outline up or down past everything.
     *
     * @param tips where the arrow may touch
     * @param upward whether up on paper rather than down
     * @param outline how far the view reaches that way, as y
     */
    List<Placing> past(List<Point> tips, boolean upward, double outline) {
        List<Placing> ways = new ArrayList<>();
        for (Point tip : tips) {
            for (double level : LEVELS) {
                fan(tip, upward, rise(tip, upward, outline, level), ways);
            }
            for (double level : NEAR) {
                double rise = rise(tip, upward, outline, level);
                if (rise >= LEAST_RISE) {
                    fan(tip, upward, rise, ways);
                }
            }
        }
        return ways;
    }

    private static double rise(Point tip, boolean upward, double outline, double level) {
        return upward ? tip.y() - (outline - level) : outline + level - tip.y();
    }

    private void fan(Point tip, boolean upward, double rise, List<Placing> ways) {
        for (int i = 0; i < ANGLES.size(); i++) {
            int angle = ANGLES.get(i);
            double length = rise / Math.sin(Math.toRadians(angle));
            for (boolean left : List.of(false, true)) {
                double steep = left ? 180 - angle : angle;
                double dislike = PER_ANGLE * i + (left ? LEFTWARD : 0);
                ways.add(way(tip, upward ? steep : -steep, length, dislike));
            }
        }
    }

    /**
     * From a point outward past an end face.
     *
     * @param outward -1 to the left, 1 to the right
     */
    List<Placing> beyond(Point tip, int outward) {
        List<Placing> ways = new ArrayList<>();
        for (double level : LEVELS) {
            for (int i = 0; i < ANGLES.size(); i++) {
                double angle = 90 - outward * (90 - ANGLES.get(i));
                ways.add(way(tip, angle, level + 4, PER_ANGLE * i));
                ways.add(way(tip, -angle, level + 4, PER_ANGLE * i));
            }
        }
        return ways;
    }

    private Placing way(Point tip, double direction, double length, double dislike) {
        Point elbow = tip.towards(direction, length);
        int lean = elbow.x() >= tip.x() ? 1 : -1;
        Label reached = label.reached(lean > 0);
        Point end = elbow.moved(lean * SHELF, 0);
        double start = lean > 0 ? end.x() + CLEAR : end.x() - CLEAR - reached.width();
        double middle = (reached.ascent() - reached.descent()) / 2;
        return Placing.pen()
                .line(Placing.Kind.LEADER, tip, elbow)
                .line(Placing.Kind.LEADER, elbow, end)
                .arrow(tip, direction + 180)
                .label(reached, Local.at(new Point(start, end.y() + middle)))
                .at(base + PER_MM * length + dislike);
    }
}
