package chargehand.measure;

/**
 * How fast a spindle turns.
 *
 * @param rpm revolutions per minute, finite
 */
public record SpindleSpeed(double rpm) implements Comparable<SpindleSpeed> {
    public SpindleSpeed {
        Finite.number("spindle speed", rpm);
    }

    public static SpindleSpeed rpm(double rpm) {
        return new SpindleSpeed(rpm);
    }

    @Override
    public int compareTo(SpindleSpeed other) {
        return Double.compare(rpm, other.rpm);
    }
}
