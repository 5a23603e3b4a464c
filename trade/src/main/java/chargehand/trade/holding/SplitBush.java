package chargehand.trade.holding;

import chargehand.trade.material.Material;

/**
 * A bush slit along one side, closed on round or toothed work by jaws around it. Millimetres, newtons, megapascals.
 *
 * @param work diameter held
 * @param clearance how much larger its hole is than the work
 * @param wall thickness
 * @param length held
 */
public record SplitBush(double work, double clearance, double wall, double length, Material material) {
    private static final double LEAST_SLIT = 1.5;
    private static final double SLIT_STEP = 0.5;

    /** The slit is cut so wide that the bush could close twice as far as it must. */
    private static final double ROOM = 2;

    /** How much of the yield strength closing may use, so that the bush opens again. */
    private static final double YIELD_SHARE = 0.8;

    /** How much of the tensile strength where there is no yield: such metal breaks without warning. */
    private static final double TENSILE_SHARE = 1.0 / 3;

    /** Beyond this wall over mean radius the rule for thin rings is only rough. */
    private static final double THIN = 0.3;

    /** The wall to make where none is given: an eighth of the work, within what can be turned and closed. */
    public static double usualWall(double work) {
        return Math.ceil(Math.clamp(work / 8, 2.5, 12) / SLIT_STEP) * SLIT_STEP;
    }

    double bore() {
        return work + clearance;
    }

    double outside() {
        return bore() + 2 * wall;
    }

    double meanRadius() {
        return (bore() + wall) / 2;
    }

    /** Wide enough to close on the work, twice over, in half millimetres. */
    public double slit() {
        return Math.max(LEAST_SLIT, Math.ceil(ROOM * Math.PI * clearance / SLIT_STEP) * SLIT_STEP);
    }

    /** How much the diameter falls until the slit is shut. */
    double closes() {
        return slit() / Math.PI;
    }

    double elastic() {
        return material.physical().elasticModulus().megapascals();
    }

    /** The pressure all round that closes a slit ring by the clearance: slit closure 3 π p R⁴ / (E I), I = t³ / 12. */
    double closingPressure() {
        return clearance * elastic() * Math.pow(wall, 3) / (36 * Math.pow(meanRadius(), 4));
    }

    /** The push of all jaws that closes it so far. */
    public double closingForce() {
        return closingPressure() * 2 * Math.PI * meanRadius() * length;
    }

    /** The greatest stress as it closes, opposite the slit: moment 2 p R² on a wall of t. */
    public double closingStress() {
        return 12 * closingPressure() * Math.pow(meanRadius() / wall, 2);
    }

    public double allowedStress() {
        return material.strength()
                .yield()
                .map(yield -> YIELD_SHARE * yield.megapascals())
                .orElse(TENSILE_SHARE * material.strength().tensile().megapascals());
    }

    boolean isThin() {
        return wall <= THIN * meanRadius();
    }

    /** What is left of the push of the jaws for the work. */
    double pushOnWork(double push) {
        return Math.max(0, push - closingForce());
    }

    double pressureOnWork(double push) {
        return pushOnWork(push) / (Math.PI * work * length);
    }

    /** The torque at which the work slips in the bush (N mm). */
    double torqueHeld(double push, double friction) {
        return friction * pushOnWork(push) * work / 2;
    }
}
