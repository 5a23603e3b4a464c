package chargehand.measure;

/**
 * A surface speed at the cutting edge.
 *
 * @param metresPerMinute the speed (m/min), finite
 */
public record Speed(double metresPerMinute) implements Comparable<Speed> {
    /** The foot of the 1959 yard and pound agreement, exactly. */
    private static final double METRES_PER_FOOT = 0.3048;

    public Speed {
        Finite.number("speed", metresPerMinute);
    }

    public static Speed metresPerMinute(double metresPerMinute) {
        return new Speed(metresPerMinute);
    }

    public static Speed feetPerMinute(double feetPerMinute) {
        return new Speed(feetPerMinute * METRES_PER_FOOT);
    }

    public double feetPerMinute() {
        return metresPerMinute / METRES_PER_FOOT;
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(metresPerMinute, other.metresPerMinute);
    }
}
