package chargehand.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes limits for people. Limits are rounded inward, the upper one down and the lower one up, so that work that is good
 * by the figures shown is never bad by the limits themselves (common practice for limits turned into the other unit).
 */
public final class LimitsText {
    private static final int MOST_DECIMALS = 9;

    private LimitsText() {}

    /**
     * The limits in one unit, the larger first: {@code 25.000/24.979 mm}. Should so few decimals leave nothing between
     * them, as many more are shown as are needed.
     *
     * @param decimals decimals of the unit, shown in full
     */
    public static String inward(Limits limits, LengthUnit unit, int decimals) {
        for (int shown = decimals; shown < MOST_DECIMALS; shown++) {
            BigDecimal most = LengthText.rounded(limits.most(), unit, shown, RoundingMode.FLOOR);
            BigDecimal least = LengthText.rounded(limits.least(), unit, shown, RoundingMode.CEILING);
            if (least.compareTo(most) < 0) {
                return text(most, least, unit);
            }
        }
        return text(exact(limits.most(), unit), exact(limits.least(), unit), unit);
    }

    /** Finer than a nanometre in either unit, so that rounding cannot tell. */
    private static BigDecimal exact(Length length, LengthUnit unit) {
        return LengthText.rounded(length, unit, MOST_DECIMALS, RoundingMode.HALF_UP);
    }

    private static String text(BigDecimal most, BigDecimal least, LengthUnit unit) {
        return figures(most, unit) + "/" + figures(least, unit) + " " + unit.symbol();
    }

    private static String figures(BigDecimal value, LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> value.toPlainString();
            case INCH -> LengthText.withoutLeadingNought(value.toPlainString());
        };
    }
}
