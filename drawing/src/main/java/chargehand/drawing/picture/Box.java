package chargehand.drawing.picture;

import chargehand.drawing.lettering.Lettering;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An upright rectangle on paper.
 *
 * @param left least x (mm)
 * @param top least y (mm)
 * @param right most x, not less than {@code left}
 * @param bottom most y, not less than {@code top}
 */
public record Box(double left, double top, double right, double bottom) {
    private static final double DESCENDERS = 0.25;

    public Box {
        if (!(left <= right && top <= bottom)) {
            throw new IllegalArgumentException("a box has its left before its right and its top above its bottom");
        }
    }

    /** The least box that holds these points, at least one. */
    public static Box around(List<Point> points) {
        Point first = points.getFirst();
        double left = first.x();
        double top = first.y();
        double right = first.x();
        double bottom = first.y();
        for (int i = 1; i < points.size(); i++) {
            Point point = points.get(i);
            left = Math.min(left, point.x());
            top = Math.min(top, point.y());
            right = Math.max(right, point.x());
            bottom = Math.max(bottom, point.y());
        }
        return new Box(left, top, right, bottom);
    }

    /** The least box that holds a mark, the width of its lines left out; bends are taken as full circles. */
    public static Box of(Mark mark) {
        return switch (mark) {
            case Mark.Line line -> around(List.of(line.from(), line.to()));
            case Mark.Stroke(LineStyle style, Ink ink, Path path) -> of(path);
            case Mark.Fill(Ink ink, Path path) -> of(path);
            case Mark.Circle(LineStyle style, Ink ink, Point centre, double radius) -> of(centre, radius);
            case Mark.Disc(Ink ink, Point centre, double radius) -> of(centre, radius);
            case Mark.Words words -> of(words);
        };
    }

    private static Box of(Point centre, double radius) {
        return new Box(centre.x() - radius, centre.y() - radius, centre.x() + radius, centre.y() + radius);
    }

    /** Where a path's points lie; an arc bulges out of it by at most what lies between its ends. */
    private static Box of(Path path) {
        return around(
                Stream.concat(Stream.of(path.start()), path.runs().stream().map(Path.Run::to))
                        .toList());
    }

    private static Box of(Mark.Words words) {
        Lettering lettering = words.lettering();
        double width = lettering.width(words.text());
        double back = switch (words.align()) {
            case LEFT -> 0;
            case MIDDLE -> width / 2;
            case RIGHT -> width;
        };
        Point start = words.at().towards(words.turned(), -back);
        Point end = start.towards(words.turned(), width);
        double up = words.turned() + 90;
        double descent = -DESCENDERS * lettering.capitals();
        return around(List.of(
                start.towards(up, descent),
                end.towards(up, descent),
                start.towards(up, lettering.capitals()),
                end.towards(up, lettering.capitals())));
    }

    /** The least box that holds all these marks, at least one. */
    public static Box of(List<Mark> marks) {
        return marks.stream().map(Box::of).reduce(Box::with).orElseThrow();
    }

    /** The least box that holds this one and another. */
    public Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public Point centre() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    /** This box with so much more on every side (mm), less where negative and there is enough of it. */
    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    public Box moved(double right, double down) {
        return new Box(left + right, top + down, this.right + right, bottom + down);
    }

    /** Whether the two share some area. */
    public boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** What the two share, if it has any area. */
    public Optional<Box> common(Box other) {
        return overlaps(other)
                ? Optional.of(new Box(
                        Math.max(left, other.left),
                        Math.max(top, other.top),
                        Math.min(right, other.right),
                        Math.min(bottom, other.bottom)))
                : Optional.empty();
    }

    /** Whether a circle runs through this box. */
    public boolean meets(Point centre, double radius) {
        double near = Math.hypot(
                centre.x() - Math.clamp(centre.x(), left, right), centre.y() - Math.clamp(centre.y(), top, bottom));
        double far = Math.hypot(
                Math.max(centre.x() - left, right - centre.x()), Math.max(centre.y() - top, bottom - centre.y()));
        return near <= radius && radius <= far;
    }

    /** Whether all of another box lies within this one. */
    public boolean holds(Box other) {
        return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
    }

    public boolean holds(Point point) {
        return left <= point.x() && point.x() <= right && top <= point.y() && point.y() <= bottom;
    }

    public Path path() {
        return Path.box(new Point(left, top), width(), height());
    }
}
