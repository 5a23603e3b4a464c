package chargehand.trade.weld;

import chargehand.measure.Angle;
import chargehand.measure.Length;

/**
 * A weld across its length.
 *
 * @param throat the thinnest way through it
 * @param areaMm2 the metal laid down across it (mm²)
 */
public record WeldSeam(Length throat, double areaMm2) {
    private static final double ROOT_TWO = Math.sqrt(2);

    /** A flat-faced fillet in a square corner by the length of its leg. */
    public static WeldSeam filletByLeg(Length leg) {
        return new WeldSeam(leg.times(1 / ROOT_TWO), leg.mm() * leg.mm() / 2);
    }

    /** The same by its throat. */
    public static WeldSeam filletByThroat(Length throat) {
        return filletByLeg(throat.times(ROOT_TWO));
    }

    /** A butt weld in a V right through the plate. */
    public static WeldSeam singleV(Length thickness, Angle included, Length gap) {
        double deep = thickness.mm();
        return new WeldSeam(thickness, deep * deep * included.half().tan() + gap.mm() * deep);
    }

    /** A butt weld in two V's that meet in the middle of the plate. */
    public static WeldSeam doubleV(Length thickness, Angle included, Length gap) {
        double deep = thickness.mm();
        return new WeldSeam(thickness, deep * deep / 2 * included.half().tan() + gap.mm() * deep);
    }
}
