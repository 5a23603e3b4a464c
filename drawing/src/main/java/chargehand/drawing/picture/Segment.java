package chargehand.drawing.picture;

import java.util.ArrayList;
import java.util.List;

/** A straight line from one point to another, for telling what crosses what. */
public record Segment(Point from, Point to) {
    /** How near two directions are before they count as the same (square of the sine of the angle between them). */
    private static final double PARALLEL = 1e-18;

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

    private double dx() {
        return to.x() - from.x();
    }

    private double dy() {
        return to.y() - from.y();
    }

    private double square() {
        return dx() * dx() + dy() * dy();
    }

    /** The least box that holds it. */
    public Box box() {
        return new Box(
                Math.min(from.x(), to.x()),
                Math.min(from.y(), to.y()),
                Math.max(from.x(), to.x()),
                Math.max(from.y(), to.y()));
    }

    /** Whether the two cross at one point, neither touching the other only with an end. */
    public boolean crosses(Segment other) {
        return !isApart(other, 0) && crosses(other.from.x(), other.from.y(), other.to.x(), other.to.y());
    }

    /** The same for a line given by its ends: layouts ask this a million times, so nothing is made on the way. */
    private boolean crosses(double fromX, double fromY, double toX, double toY) {
        double otherDx = toX - fromX;
        double otherDy = toY - fromY;
        double turn = dx() * otherDy - dy() * otherDx;
        if (turn * turn <= PARALLEL * square() * (otherDx * otherDx + otherDy * otherDy)) {
            return false;
        }
        double x = fromX - from.x();
        double y = fromY - from.y();
        double here = (x * otherDy - y * otherDx) / turn;
        double there = (x * dy() - y * dx()) / turn;
        return here > 0 && here < 1 && there > 0 && there < 1;
    }

    /** Whether the two are plainly further apart than a distance: the boxes that hold them are. */
    private boolean isApart(Segment other, double distance) {
        return Math.max(from.x(), to.x()) + distance < Math.min(other.from.x(), other.to.x())
                || Math.min(from.x(), to.x()) - distance > Math.max(other.from.x(), other.to.x())
                || Math.max(from.y(), to.y()) + distance < Math.min(other.from.y(), other.to.y())
                || Math.min(from.y(), to.y()) - distance > Math.max(other.from.y(), other.to.y());
    }

    /** Whether any of this line lies within a box or ends on its border. */
    public boolean meets(Box box) {
        boolean beside = Math.max(from.x(), to.x()) < box.left()
                || Math.min(from.x(), to.x()) > box.right()
                || Math.max(from.y(), to.y()) < box.top()
                || Math.min(from.y(), to.y()) > box.bottom();
        if (beside) {
            return false;
        }
        return box.holds(from) || box.holds(to) || crossesSides(box.left(), box.top(), box.right(), box.bottom());
    }

    private boolean crossesSides(double left, double top, double right, double bottom) {
        return crosses(left, top, right, top)
                || crosses(right, top, right, bottom)
                || crosses(right, bottom, left, bottom)
                || crosses(left, bottom, left, top);
    }

    /** How far a point lies from this line (mm). */
    public double distance(Point point) {
        return Math.sqrt(squareTo(point));
    }

    /** The square of how far a point lies from this line. */
    private double squareTo(Point point) {
        double square = square();
        double x = point.x() - from.x();
        double y = point.y() - from.y();
        double part = square == 0 ? 0 : Math.clamp((x * dx() + y * dy()) / square, 0.0, 1.0);
        double offX = x - part * dx();
        double offY = y - part * dy();
        return offX * offX + offY * offY;
    }

    /** Whether another line comes nearer to this one than a distance (mm), or crosses it. */
    public boolean isNearer(Segment other, double distance) {
        return !isApart(other, distance)
                && (crosses(other)
                        || other.reaches(from, distance)
                        || other.reaches(to, distance)
                        || reaches(other.from, distance)
                        || reaches(other.to, distance));
    }

    /** Whether a point lies nearer than a distance. */
    private boolean reaches(Point point, double distance) {
        double x = point.x() - from.x();
        double y = point.y() - from.y();
        double square = square();
        double part = square == 0 ? 0 : Math.clamp((x * dx() + y * dy()) / square, 0.0, 1.0);
        double offX = x - part * dx();
        double offY = y - part * dy();
        return offX * offX + offY * offY < distance * distance;
    }

    public Segment moved(double right, double down) {
        return new Segment(from.moved(right, down), to.moved(right, down));
    }
}
