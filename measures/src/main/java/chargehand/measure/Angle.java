package chargehand.measure;

/**
 * A plane angle.
 *
 * @param degrees the angle (degrees of arc), finite, within ±360 000°
 */
public record Angle(double degrees) implements Comparable<Angle> {
    private static final double MOST_DEGREES = 360_000;

    public Angle {
        Finite.within("angle", degrees, MOST_DEGREES);
    }

    public static Angle degrees(double degrees) {
        return new Angle(degrees);
    }

    public static Angle radians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /** The angle whose tangent this is, between -90° and 90°. */
    public static Angle arctan(double tangent) {
        return radians(Math.atan(tangent));
    }

    public double inRadians() {
        return Math.toRadians(degrees);
    }

    public double tan() {
        return Math.tan(inRadians());
    }

    public double sin() {
        return Math.sin(inRadians());
    }

    public double cos() {
        return Math.cos(inRadians());
    }

    public Angle half() {
        return new Angle(degrees / 2);
    }

    public Angle times(double factor) {
        return new Angle(degrees * factor);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }
}
