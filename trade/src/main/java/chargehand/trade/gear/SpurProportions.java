package chargehand.trade.gear;

import chargehand.measure.Angle;

/** The heights of full-depth spur teeth over their module, for whoever needs no more of a wheel. */
public final class SpurProportions {
    private SpurProportions() {}

    /** The depth below the pitch circle over the module, of the full-depth teeth that go with a pressure angle. */
    public static double dedendum(Angle pressureAngle) {
        return ToothSystem.full(pressureAngle).dedendum();
    }
}
