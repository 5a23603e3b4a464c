package chargehand.measure;

/** Writes working times for people; halves are rounded away from nought. */
public final class WorkTimeText {
    private static final long SECONDS_SHOWN_BELOW = 10 * 60;

    private WorkTimeText() {}

    /**
     * To the nearest minute from ten minutes on, below that to the nearest second: {@code 1 h 50 min}, {@code 25 min},
     * {@code 1 min 30 s}, {@code 45 s}.
     */
    public static String of(WorkTime time) {
        long seconds = Math.round(Math.abs(time.seconds()));
        String sign = time.seconds() < 0 && seconds > 0 ? "-" : "";
        return sign + (seconds < SECONDS_SHOWN_BELOW ? below(seconds) : hours(Math.round(seconds / 60.0)));
    }

    private static String below(long seconds) {
        long minutes = seconds / 60;
        return joined(part(minutes, "min"), part(seconds % 60, "s"), "0 s");
    }

    private static String hours(long minutes) {
        return joined(part(minutes / 60, "h"), part(minutes % 60, "min"), "0 min");
    }

    private static String part(long count, String unit) {
        return count == 0 ? "" : count + " " + unit;
    }

    private static String joined(String larger, String smaller, String nothing) {
        String both = (larger + " " + smaller).strip();
        return both.isEmpty() ? nothing : both;
    }
}
