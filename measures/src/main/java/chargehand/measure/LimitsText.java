package chargehand.measure;

import java.math.BigDecimal;

/**
 * Writes limits for people. Limits are rounded inward, the upper one down and the lower one up, so that work that is good
 * by the figures shown is never bad by the limits themselves (common practice for limits turned into the other unit).
 */
public final class LimitsText {
    private LimitsText() {}

    /**
     * The limits in one unit, the larger first: {@code 25.000/24.979 mm}. Should so few decimals leave nothing between
     * them, as many more are shown as are needed.
     *
     * @param decimals decimals of the unit, shown in full
     */
    public static String inward(Limits limits, LengthUnit unit, int decimals) {
        Inward inward = Inward.of(limits, unit, decimals);
        return figures(inward.most(), unit) + "/" + figures(inward.least(), unit) + " " + unit.symbol();
    }

    private static String figures(BigDecimal value, LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> value.toPlainString();
            case INCH -> LengthText.withoutLeadingNought(value.toPlainString());
        };
    }
}
