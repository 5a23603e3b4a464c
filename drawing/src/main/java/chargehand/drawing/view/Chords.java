package chargehand.drawing.view;

import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/** Paths and circles as the points of chords, near enough that no eye can tell them apart. */
final class Chords {
    private static final int ROUND = 72;
    private static final double PER_CHORD = 2 * Math.PI / ROUND;

    private Chords() {}

    /** A full circle, its first point not repeated. */
    static List<Point> circle(Point centre, double radius) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            points.add(centre.towards(360.0 * i / ROUND, radius));
        }
        return points;
    }

    /** A path from its start to its end, back at its start where it is closed. */
    static List<Point> of(Path path) {
        List<Point> points = new ArrayList<>();
        points.add(path.start());
        for (Path.Run run : path.runs()) {
            switch (run) {
                case Path.Straight(Point to) -> points.add(to);
                case Path.Bend bend -> bend(points.getLast(), bend, points);
            }
        }
        if (path.closed()) {
            points.add(path.start());
        }
        return points;
    }

    private static void bend(Point from, Path.Bend bend, List<Point> points) {
        Point to = bend.to();
        double half = from.distance(to) / 2;
        double turn = 2 * Math.asin(Math.min(1, half / bend.radius())) * (bend.clockwise() ? -1 : 1);
        Point centre = centre(from, bend, half);
        double begin = Math.atan2(centre.y() - from.y(), from.x() - centre.x());
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(turn) / PER_CHORD));
        for (int i = 1; i < pieces; i++) {
            points.add(centre.towards(Math.toDegrees(begin + turn * i / pieces), bend.radius()));
        }
        points.add(to);
    }

    /** The middle of an arc's circle, to the right of its chord as one goes where it bends clockwise. */
    private static Point centre(Point from, Path.Bend bend, double half) {
        double off = Math.sqrt(Math.max(0, bend.radius() * bend.radius() - half * half));
        double along =
                Math.toDegrees(Math.atan2(from.y() - bend.to().y(), bend.to().x() - from.x()));
        return from.between(bend.to(), 0.5).towards(along + (bend.clockwise() ? -90 : 90), off);
    }
}
