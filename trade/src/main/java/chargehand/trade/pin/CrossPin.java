package chargehand.trade.pin;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;

/**
 * A pin through a shaft and the hub round it, sheared where it enters and where it leaves.
 *
 * @param diameter of the pin where it is sheared
 * @param fill share of the circle that is metal: one for a solid pin
 * @param shaft diameter of the shaft, more than the pin's
 */
public record CrossPin(Length diameter, double fill, Length shaft) {
    private static final int PLANES = 2;

    /** The metal that is sheared at one of the two planes (mm²). */
    public double areaMm2() {
        return fill * Math.PI * diameter.mm() * diameter.mm() / 4;
    }

    /** Shear stress from a torque: the two planes lie at the surface of the shaft, so each takes T / d. */
    public Pressure shear(Torque torque) {
        return Pressure.megapascals(1000 * torque.newtonMetres() / (shaft.mm() * areaMm2()));
    }

    /** Shear stress from a thrust along the shaft, shared by the two planes. */
    public Pressure shear(Force thrust) {
        return Pressure.megapascals(thrust.newtons() / (PLANES * areaMm2()));
    }

    /** The greatest pressure of the pin in its hole in the shaft from a torque, at the surface: 6 T / (d D²). */
    public Pressure bearing(Torque torque) {
        return Pressure.megapascals(6000 * torque.newtonMetres() / (diameter.mm() * shaft.mm() * shaft.mm()));
    }

    /** The pressure of the pin in its hole in the shaft from a thrust. */
    public Pressure bearing(Force thrust) {
        return Pressure.megapascals(thrust.newtons() / (diameter.mm() * shaft.mm()));
    }

    /** The torque that brings the shear stress to what is allowed. */
    public Torque torqueCapacity(Pressure allowed) {
        return Torque.newtonMetres(allowed.megapascals() * areaMm2() * shaft.mm() / 1000);
    }

    /** The thrust that brings the shear stress to what is allowed. */
    public Force thrustCapacity(Pressure allowed) {
        return Force.newtons(allowed.megapascals() * PLANES * areaMm2());
    }
}
