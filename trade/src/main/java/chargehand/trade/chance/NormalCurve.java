package chargehand.trade.chance;

/** The bell curve of errors: its density, and the part of it below a point. */
public final class NormalCurve {
    private static final double[] TERMS = {0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429};
    private static final double SCALE = 0.3275911;

    private NormalCurve() {}

    /** The density at so many standard deviations from the middle, for a deviation of one. */
    public static double density(double deviations) {
        return Math.exp(-deviations * deviations / 2) / Math.sqrt(2 * Math.PI);
    }

    /**
     * The part of the curve below so many standard deviations, to 1.5e-7: Abramowitz and Stegun, Handbook of Mathematical
     * Functions, 7.1.26.
     */
    public static double below(double deviations) {
        double x = Math.abs(deviations) / Math.sqrt(2);
        double t = 1 / (1 + SCALE * x);
        double polynomial = 0;
        for (int i = TERMS.length - 1; i >= 0; i--) {
            polynomial = (polynomial + TERMS[i]) * t;
        }
        double tail = polynomial * Math.exp(-x * x) / 2;
        return deviations < 0 ? tail : 1 - tail;
    }
}
