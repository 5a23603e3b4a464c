package chargehand.trade.gear;

/** The involute function, inv α = tan α − α, and its inverse. Angles are in radians. */
final class Involute {
    private static final int MOST_STEPS = 60;
    private static final double CLOSE = 1e-15;

    private Involute() {}

    static double of(double angle) {
        return Math.tan(angle) - angle;
    }

    /**
     * The angle whose involute this is.
     *
     * @param involute not less than nought
     */
    static double inverse(double involute) {
        // inv α ≈ α³/3 for small angles; arctan keeps the start below a right angle for large ones.
        double angle = Math.min(Math.cbrt(3 * involute), Math.atan(involute + Math.PI / 2));
        for (int i = 0; i < MOST_STEPS; i++) {
            double tangent = Math.tan(angle);
            if (tangent == 0) {
                return 0;
            }
            double step = (tangent - angle - involute) / (tangent * tangent);
            angle -= step;
            if (Math.abs(step) < CLOSE) {
                break;
            }
        }
        return angle;
    }
}
