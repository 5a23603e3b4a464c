package chargehand.drawing.picture;

/**
 * A place on paper.
 *
 * @param x to the right (mm)
 * @param y down (mm)
 */
public record Point(double x, double y) {
    private static final double FURTHEST = 100_000;

    public Point {
        if (!(Math.abs(x) <= FURTHEST && Math.abs(y) <= FURTHEST)) {
            throw new IllegalArgumentException("a point lies within ±" + FURTHEST + " mm, not at " + x + ", " + y);
        }
    }

    public static Point of(double x, double y) {
        return new Point(x, y);
    }

    public Point moved(double right, double down) {
        return new Point(x + right, y + down);
    }

    /** The point so far from this one (mm) in a direction (degrees, 0 to the right, anticlockwise as seen). */
    public Point towards(double degrees, double distance) {
        double angle = Math.toRadians(degrees);
        return new Point(x + distance * Math.cos(angle), y - distance * Math.sin(angle));
    }

    /** The point a part of the way from here to there: 0 is here, 1 there. */
    public Point between(Point there, double part) {
        return new Point(x + part * (there.x - x), y + part * (there.y - y));
    }

    public double distance(Point there) {
        return Math.hypot(there.x - x, there.y - y);
    }
}
