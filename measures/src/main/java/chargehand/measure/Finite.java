package chargehand.measure;

/** The one check every quantity makes: a real number within a stated bound, never NaN. */
final class Finite {
    private static final double MOST = 1e15;

    private Finite() {}

    static void number(String what, double value) {
        within(what, value, MOST);
    }

    static void within(String what, double value, double most) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a number, not " + value);
        }
        if (Math.abs(value) > most) {
            throw new OutOfRange(what + " must be a number within ±" + most + ", not " + value);
        }
    }
}
