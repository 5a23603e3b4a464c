package chargehand.measure;

/**
 * Time that work takes: not a date and not a clock time.
 *
 * @param seconds the time (s), finite
 */
public record WorkTime(double seconds) implements Comparable<WorkTime> {
    /** No time at all. */
    public static final WorkTime ZERO = new WorkTime(0);

    public WorkTime {
        Finite.number("time", seconds);
    }

    public static WorkTime seconds(double seconds) {
        return new WorkTime(seconds);
    }

    public static WorkTime minutes(double minutes) {
        return new WorkTime(minutes * 60);
    }

    public double minutes() {
        return seconds / 60;
    }

    public WorkTime plus(WorkTime other) {
        return new WorkTime(seconds + other.seconds);
    }

    public WorkTime times(double factor) {
        return new WorkTime(seconds * factor);
    }

    @Override
    public int compareTo(WorkTime other) {
        return Double.compare(seconds, other.seconds);
    }
}
