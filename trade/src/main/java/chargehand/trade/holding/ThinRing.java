package chargehand.trade.holding;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.trade.sum.Source;
import java.util.stream.IntStream;

/**
 * A ring pressed at equal places round it by jaws: what is turned or bored round in it then springs into lobes when the jaws
 * let go. The push is taken as even over each jaw's width and is put in harmonics, each of which bends the ring by
 * {@code p r⁴ / (E I (m² − 1)²)}; what stretches the ring all round is left out.
 *
 * @param meanRadius from the axis to the middle of the wall, more than zero
 * @param wall its thickness, more than zero
 * @param length along the axis, more than zero
 * @param modulus of the metal
 */
public record ThinRing(Length meanRadius, Length wall, Length length, Pressure modulus) {
    /** The bending of a ring in its plane. */
    public static final Source SOURCE =
            Source.memory("Timoshenko, Strength of Materials, bending of a ring in its plane");

    /** Higher harmonics move the ring by less than a thousandth of the first. */
    private static final int HARMONICS = 12;

    public ThinRing {
        if (!meanRadius.isPositive() || !wall.isPositive() || !length.isPositive()) {
            throw new IllegalArgumentException("a ring has a radius, a wall and a length");
        }
    }

    /**
     * How far the largest radius comes to differ from the smallest.
     *
     * @param jaws how many press, at least 2
     * @param each the push of one
     * @param halfWidth half the angle that a jaw covers (radians), 0 for one that presses in a line
     */
    public Length outOfRound(int jaws, Force each, double halfWidth) {
        double under = moved(jaws, each, halfWidth, 0);
        double between = moved(jaws, each, halfWidth, Math.PI / jaws);
        return Length.mm(Math.abs(under - between));
    }

    /**
     * How far the ring goes inward (mm).
     *
     * @param from the angle from the middle of a jaw (radians)
     */
    double moved(int jaws, Force each, double halfWidth, double from) {
        return IntStream.rangeClosed(1, HARMONICS)
                .mapToDouble(number -> {
                    int lobes = number * jaws;
                    double spread = halfWidth == 0 ? 1 : Math.sin(lobes * halfWidth) / (lobes * halfWidth);
                    double push = jaws * each.newtons() / (Math.PI * meanRadius.mm()) * spread;
                    return push
                            * Math.pow(meanRadius.mm(), 4)
                            / (bendingStiffness() * Math.pow((double) lobes * lobes - 1, 2))
                            * Math.cos(lobes * from);
                })
                .sum();
    }

    /** E I (N mm²). */
    private double bendingStiffness() {
        return modulus.megapascals() * length.mm() * Math.pow(wall.mm(), 3) / 12;
    }
}
