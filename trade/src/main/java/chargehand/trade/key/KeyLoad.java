package chargehand.trade.key;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;

/**
 * What a torque does to a key: the force at the shaft's surface shears the key along its width and crushes its side on half
 * its height (machine design, sunk keys).
 *
 * @param force at the surface of the shaft
 * @param key the key
 */
public record KeyLoad(Force force, KeySize key) {
    /** The load of a torque on a shaft of this diameter. */
    public static KeyLoad of(Torque torque, Length shaft, KeySize key) {
        return new KeyLoad(Force.newtons(2000 * torque.newtonMetres() / shaft.mm()), key);
    }

    /** Shear stress in a key of this working length. */
    public Pressure shear(Length length) {
        return Pressure.megapascals(force.newtons() / (key.width().mm() * length.mm()));
    }

    /** Crushing stress on the side of a key of this working length. */
    public Pressure crushing(Length length) {
        return Pressure.megapascals(2 * force.newtons() / (key.height().mm() * length.mm()));
    }

    /** The working length that keeps both stresses to what is allowed. */
    public Length lengthNeeded(Pressure shear, Pressure crushing) {
        double byShear = force.newtons() / (key.width().mm() * shear.megapascals());
        double byCrushing = 2 * force.newtons() / (key.height().mm() * crushing.megapascals());
        return Length.mm(Math.max(byShear, byCrushing));
    }
}
