package chargehand.trade.material;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.trade.sum.Source;

/**
 * Kienzle's law of the cutting force: the force on each square millimetre of chip grows as the chip gets thinner.
 *
 * @param kc11 force per area of a chip 1 mm thick
 * @param mc exponent of the thickness, 0 to 1
 * @param source where both come from
 */
public record Kienzle(Pressure kc11, double mc, Source source) {
    private static final Length ONE_MILLIMETRE = Length.mm(1);

    /** The force per area, kc = kc1.1 · h^−mc, for a chip of thickness h, more than zero. */
    public Pressure specificForce(Length chipThickness) {
        return Pressure.megapascals(kc11.megapascals() * Math.pow(chipThickness.over(ONE_MILLIMETRE), -mc));
    }
}
