package chargehand.trade.packer;

/**
 * Something known to within a normal spread.
 *
 * @param mean the likeliest value
 * @param spread one standard deviation, more than nought
 */
record Bell(double mean, double spread) {
    /** A band of so many standard deviations each way holds all but one in twenty. */
    static final double BAND = 2;

    private static final double[] TERMS = {0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429};
    private static final double SCALE = 0.3275911;

    double low() {
        return mean - BAND * spread;
    }

    double high() {
        return mean + BAND * spread;
    }

    /** The chance of lying below, to 1.5e-7: Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.26. */
    double below(double value) {
        double x = Math.abs(value - mean) / spread / Math.sqrt(2);
        double t = 1 / (1 + SCALE * x);
        double polynomial = 0;
        for (int i = TERMS.length - 1; i >= 0; i--) {
            polynomial = (polynomial + TERMS[i]) * t;
        }
        double tail = polynomial * Math.exp(-x * x) / 2;
        return value < mean ? tail : 1 - tail;
    }

    double between(double low, double high) {
        return Math.max(0, below(high) - below(low));
    }
}
