package chargehand.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Two lengths as figures of one unit, the larger rounded down and the smaller up, so that what lies between the figures
 * lies between the lengths.
 *
 * @param most figures of the larger
 * @param least figures of the smaller, with the same decimals
 */
record Inward(BigDecimal most, BigDecimal least) {
    private static final int MOST_DECIMALS = 9;

    /** At so many decimals of the unit, or as many more as it takes to leave room between the two. */
    static Inward of(Limits limits, LengthUnit unit, int decimals) {
        for (int shown = decimals; shown < MOST_DECIMALS; shown++) {
            var inward = new Inward(
                    LengthText.rounded(limits.most(), unit, shown, RoundingMode.FLOOR),
                    LengthText.rounded(limits.least(), unit, shown, RoundingMode.CEILING));
            if (inward.least.compareTo(inward.most) < 0) {
                return inward;
            }
        }
        return exact(limits, unit);
    }

    /** Finer than a nanometre in either unit, so that rounding cannot tell. */
    private static Inward exact(Limits limits, LengthUnit unit) {
        return new Inward(
                LengthText.rounded(limits.most(), unit, MOST_DECIMALS, RoundingMode.HALF_UP),
                LengthText.rounded(limits.least(), unit, MOST_DECIMALS, RoundingMode.HALF_UP));
    }
}
