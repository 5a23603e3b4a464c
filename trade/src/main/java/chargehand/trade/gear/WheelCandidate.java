package chargehand.trade.gear;

import chargehand.measure.AngleText;
import chargehand.measure.Figures;

/**
 * One system that a wheel may be of.
 *
 * @param shift the likeliest shift of its profile over the module; nought for a plain wheel
 * @param outsideOff what was read over what this wheel would have (mm)
 * @param misfit mean square of the readings in standard deviations
 */
record WheelCandidate(WheelSystem system, double shift, double outsideOff, double misfit, double probability) {
    boolean isShifted() {
        return shift != 0;
    }

    /** As said to a person: "10 DP 14.5°", "module 2 20°, shifted 0.31". */
    String say() {
        String plain = system.name() + " " + AngleText.degrees(system.pressureAngle(), 1);
        return isShifted() ? plain + ", shifted " + Figures.atMost(2, shift) : plain;
    }
}
