package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.measure.Limits;

/**
 * Where a size may lie: a nominal size with its two deviations.
 *
 * @param nominal the size as named on the drawing
 * @param toleranceClass the class the deviations belong to
 * @param lower the lower deviation, added to the nominal size; negative below it
 * @param upper the upper deviation, not less than {@code lower}
 */
public record ToleranceZone(Length nominal, ToleranceClass toleranceClass, Length lower, Length upper) {
    /** The least and most that the size may be. */
    public Limits limits() {
        return Limits.of(nominal, lower, upper);
    }

    /** The room between the limits. */
    public Length tolerance() {
        return upper.minus(lower);
    }
}
