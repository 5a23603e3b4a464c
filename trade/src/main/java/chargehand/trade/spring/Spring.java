package chargehand.trade.spring;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.SpringRate;

/**
 * A helical spring of round wire, by the usual rules (machine design): it gives way 8 F D³ n / (G d⁴), and its wire is
 * stressed by K 8 F D / (π d³), where Wahl's factor K allows for the curve of the wire and for direct shear.
 *
 * @param wire diameter of the wire
 * @param mean diameter of the coil from middle to middle of the wire, more than {@code wire}
 * @param active coils that are free to give way
 */
public record Spring(Length wire, Length mean, double active) {
    public Spring {
        if (!wire.isPositive() || !wire.isLessThan(mean) || !(active > 0)) {
            throw new IllegalArgumentException("a spring has coils wider than its wire");
        }
    }

    /** Mean diameter over wire: how tightly it is wound. */
    public double index() {
        return mean.over(wire);
    }

    /** Wahl's factor, (4C − 1)/(4C − 4) + 0.615/C. */
    public double wahl() {
        double c = index();
        return (4 * c - 1) / (4 * c - 4) + 0.615 / c;
    }

    /** Force for each length of travel, G d⁴ / (8 D³ n). */
    public SpringRate rate(Pressure shearModulus) {
        return SpringRate.newtonsPerMm(
                shearModulus.megapascals() * Math.pow(wire.mm(), 4) / (8 * Math.pow(mean.mm(), 3) * active));
    }

    /** The greatest shear stress in the wire under a force. */
    public Pressure stress(Force force) {
        return Pressure.megapascals(wahl() * 8 * force.newtons() * mean.mm() / (Math.PI * Math.pow(wire.mm(), 3)));
    }
}
