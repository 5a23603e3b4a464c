package chargehand.trade.press;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.trade.material.Physical;

/**
 * A hub on a shaft larger than its bore, by Lamé's equations for two rings pressed together (strength of materials). It
 * holds while both stay elastic and the hub is as long as the fit.
 *
 * @param diameter where hub and shaft meet
 * @param interference how much larger the shaft is, on the diameter, more than nothing
 * @param hubOutside outside diameter of the hub, more than {@code diameter}
 * @param shaftBore bore of the shaft, nothing if solid, less than {@code diameter}
 * @param hub what the hub is made of
 * @param shaft what the shaft is made of
 */
public record PressFit(
        Length diameter, Length interference, Length hubOutside, Length shaftBore, Physical hub, Physical shaft) {
    public PressFit {
        if (!diameter.isLessThan(hubOutside) || !shaftBore.isLessThan(diameter) || !interference.isPositive()) {
            throw new IllegalArgumentException("a press fit has a hub outside its shaft and some interference");
        }
    }

    /** The pressure between hub and shaft. */
    public Pressure pressure() {
        double yields = diameter.mm()
                * ((hubFactor() + hub.poissonRatio()) / hub.elasticModulus().megapascals()
                        + (shaftFactor() - shaft.poissonRatio())
                                / shaft.elasticModulus().megapascals());
        return Pressure.megapascals(interference.mm() / yields);
    }

    /** The hoop stress at the bore of the hub, in tension, over the pressure. */
    public double hubFactor() {
        return (square(hubOutside) + square(diameter)) / (square(hubOutside) - square(diameter));
    }

    /** How the shaft gives way over the pressure: one for a solid shaft. */
    public double shaftFactor() {
        return (square(diameter) + square(shaftBore)) / (square(diameter) - square(shaftBore));
    }

    /** The hoop stress in the hub, tension, at its bore. */
    public Pressure hubStress() {
        return Pressure.megapascals(pressure().megapascals() * hubFactor());
    }

    /** The greatest hoop stress in the shaft, compression and so negative: at its bore, or all through if it is solid. */
    public Pressure shaftStress() {
        double factor = shaftBore.isZero() ? 1 : 2 * square(diameter) / (square(diameter) - square(shaftBore));
        return Pressure.megapascals(-pressure().megapascals() * factor);
    }

    private static double square(Length length) {
        return length.mm() * length.mm();
    }
}
