package chargehand.trade.holding;

import chargehand.measure.Length;

/**
 * Turning an eccentric in a three-jaw chuck with packing under one jaw. With jaws that touch at points the packing is
 * t = 1.5 e − r + √(r² − 0.75 e²) for work of radius r thrown out by e; the shop's rule keeps only 1.5 e and is always a
 * little too much.
 */
public final class ThreeJawPacking {
    private static final double RULE = 1.5;
    private static final double MOST_OF_RADIUS = 2 / Math.sqrt(3);

    private ThreeJawPacking() {}

    /** Whether the other two jaws can still reach the work when it is thrown out by this much. */
    public static boolean reaches(Length eccentricity, Length diameter) {
        return eccentricity.over(diameter.half()) < MOST_OF_RADIUS;
    }

    /** The packing by geometry, for jaws that touch at points. */
    public static Length exact(Length eccentricity, Length diameter) {
        double e = eccentricity.mm();
        double r = diameter.half().mm();
        return Length.mm(RULE * e - r + Math.sqrt(r * r - 0.75 * e * e));
    }

    /** The packing by the shop's rule. */
    public static Length byRule(Length eccentricity) {
        return eccentricity.times(RULE);
    }
}
