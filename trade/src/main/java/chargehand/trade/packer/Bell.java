package chargehand.trade.packer;

import chargehand.trade.chance.NormalCurve;

/**
 * Something known to within a normal spread.
 *
 * @param mean the likeliest value
 * @param spread one standard deviation, more than nought
 */
record Bell(double mean, double spread) {
    /** A band of so many standard deviations each way holds all but one in twenty. */
    static final double BAND = 2;

    double low() {
        return mean - BAND * spread;
    }

    double high() {
        return mean + BAND * spread;
    }

    /** The chance of lying below. */
    double below(double value) {
        return NormalCurve.below((value - mean) / spread);
    }

    double between(double low, double high) {
        return Math.max(0, below(high) - below(low));
    }
}
