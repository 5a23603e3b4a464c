package chargehand.trade.vessel;

import chargehand.measure.Length;
import chargehand.measure.Pressure;

/**
 * A tube under pressure from inside.
 *
 * <p>A wall thinner than a twentieth of the bore is taken as a skin that carries p d / 2t all through. A thicker one is
 * reckoned by Lamé, the hoop stress greatest at the bore: p (R² + r²) / (R² − r²).
 *
 * @param inside diameter of the bore
 * @param outside diameter, more than {@code inside}
 */
public record Cylinder(Length inside, Length outside) {
    private static final double THIN = 1.0 / 20;

    public Cylinder {
        if (!inside.isPositive() || !inside.isLessThan(outside)) {
            throw new IllegalArgumentException("a tube is larger outside than inside");
        }
    }

    public Length wall() {
        return outside.minus(inside).half();
    }

    public boolean isThin() {
        return wall().over(inside) < THIN;
    }

    /** The greatest hoop stress under this pressure, at the bore. */
    public Pressure hoopStress(Pressure pressure) {
        return Pressure.megapascals(pressure.megapascals() * (isThin() ? inside.over(wall()) / 2 : atBore()));
    }

    /** Lamé's hoop stress at the bore over the pressure. */
    public double atBore() {
        return (square(outside) + square(inside)) / (square(outside) - square(inside));
    }

    /** Lamé's hoop stress at the outside over the pressure. */
    public double atOutside() {
        return 2 * square(inside) / (square(outside) - square(inside));
    }

    private static double square(Length length) {
        return length.mm() * length.mm();
    }
}
