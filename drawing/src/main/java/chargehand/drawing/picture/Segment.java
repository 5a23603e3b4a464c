package chargehand.drawing.picture;

import java.util.ArrayList;
import java.util.List;

/** A straight line from one point to another, for telling what crosses what. */
public record Segment(Point from, Point to) {
    /** How near two directions are before they count as the same line (sine of the angle between them). */
    private static final double PARALLEL = 1e-9;

    /** The straight lines from point to point. */
    public static List<Segment> along(List<Point> points) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            segments.add(new Segment(points.get(i - 1), points.get(i)));
        }
        return segments;
    }

    public double length() {
        return from.distance(to);
    }

    /** Whether the two cross at one point, neither touching the other only with an end. */
    public boolean crosses(Segment other) {
        if (isBeside(
                Math.min(other.from.x(), other.to.x()),
                Math.min(other.from.y(), other.to.y()),
                Math.max(other.from.x(), other.to.x()),
                Math.max(other.from.y(), other.to.y()))) {
            return false;
        }
        double turn = turn(to, other);
        if (Math.abs(turn) <= PARALLEL * length() * other.length()) {
            return false;
        }
        double here = cross(other.from.x() - from.x(), other.from.y() - from.y(), other) / turn;
        double there = cross(other.from.x() - from.x(), other.from.y() - from.y(), this) / turn;
        return here > 0 && here < 1 && there > 0 && there < 1;
    }

    private double turn(Point end, Segment other) {
        return cross(end.x() - from.x(), end.y() - from.y(), other);
    }

    private static double cross(double dx, double dy, Segment along) {
        return dx * (along.to.y() - along.from.y()) - dy * (along.to.x() - along.from.x());
    }

    /** Whether any of this line lies within a box or ends on its border. */
    public boolean meets(Box box) {
        if (isBeside(box.left(), box.top(), box.right(), box.bottom())) {
            return false;
        }
        return box.holds(from) || box.holds(to) || sides(box).stream().anyMatch(this::crosses);
    }

    /** Whether both ends lie beyond the same side of a box, so that it cannot be met. */
    private boolean isBeside(double left, double top, double right, double bottom) {
        return Math.max(from.x(), to.x()) < left
                || Math.min(from.x(), to.x()) > right
                || Math.max(from.y(), to.y()) < top
                || Math.min(from.y(), to.y()) > bottom;
    }

    private static List<Segment> sides(Box box) {
        Point corner = new Point(box.left(), box.top());
        Point opposite = new Point(box.right(), box.bottom());
        return along(List.of(
                corner, new Point(box.right(), box.top()), opposite, new Point(box.left(), box.bottom()), corner));
    }

    /** How far a point lies from this line (mm). */
    public double distance(Point point) {
        double length = length();
        if (length == 0) {
            return from.distance(point);
        }
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double part = ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / (length * length);
        return from.between(to, Math.clamp(part, 0.0, 1.0)).distance(point);
    }

    /** How far another line lies from this one (mm), 0 where they cross. */
    public double distance(Segment other) {
        if (crosses(other)) {
            return 0;
        }
        double mine = Math.min(other.distance(from), other.distance(to));
        return Math.min(mine, Math.min(distance(other.from), distance(other.to)));
    }

    public Segment moved(double right, double down) {
        return new Segment(from.moved(right, down), to.moved(right, down));
    }
}
