package chargehand.trade.gear;

import chargehand.measure.Angle;
import chargehand.trade.sum.Source;

/**
 * How tall a tooth is for its pitch.
 *
 * @param name what it is called
 * @param addendum height above the pitch circle over the module
 * @param dedendum depth below the pitch circle over the module
 * @param extra depth below the pitch circle besides (mm)
 */
record ToothSystem(String name, double addendum, double dedendum, double extra, Source source) {
    /** Below this the old proportions of 14½° teeth go with the angle, above it those of 20°. */
    private static final Angle BETWEEN = Angle.degrees(17);

    private static final ToothSystem OLD =
            new ToothSystem("full depth", 1, 1.157, 0, Source.memory("Brown & Sharpe, 14½° teeth"));
    private static final ToothSystem FULL =
            new ToothSystem("full depth", 1, 1.25, 0, Source.memory("ISO 53 and AGMA B6.1, 20° teeth"));

    /** 0.8 above and 1.0 below, 20°. */
    static final ToothSystem STUB = new ToothSystem("stub", 0.8, 1.0, 0, Source.memory("AGMA B6.1, 20° stub teeth"));

    private static final ToothSystem FINE =
            new ToothSystem("fine pitch", 1, 1.2, 0.0508, Source.memory("AGMA B6.7, fine pitch, 0.002 in besides"));

    /** The full-depth teeth that go with a pressure angle. */
    static ToothSystem full(Angle pressureAngle) {
        return pressureAngle.compareTo(BETWEEN) < 0 ? OLD : FULL;
    }

    static ToothSystem of(Proportions proportions, Angle pressureAngle) {
        return switch (proportions) {
            case FULL -> full(pressureAngle);
            case STUB -> STUB;
            case FINE -> FINE;
        };
    }
}
