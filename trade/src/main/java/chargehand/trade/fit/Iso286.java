package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Working;

/**
 * Deviations by ISO 286 for nominal sizes up to 3150 mm: all letters up to 500 mm, D to U without the intermediate ones
 * above. Each range of size includes its upper bound.
 *
 * <p>A shaft's fundamental deviation is read from the table. A hole's is the shaft's turned over, except that K, M and N
 * up to grade 8 and P to ZC up to grade 7 are moved by Δ, the step from the next finer grade, so that a hole-basis fit
 * and the shaft-basis fit of the same letters, the hole one grade coarser, are equally tight. The other deviation
 * follows from the tolerance grade.
 */
public final class Iso286 {
    private Iso286() {}

    /**
     * The deviations of a size with its class as written.
     *
     * @param nominal the size as named on the drawing, more than zero and at most 3150 mm
     * @param toleranceClass such as {@code H7} or {@code g6}
     * @throws Unreadable with a plain sentence when the class cannot be read or the standard does not give it at this size
     */
    public static ToleranceZone limits(Length nominal, String toleranceClass) {
        return limits(nominal, ToleranceClass.parse(toleranceClass), new Working());
    }

    /**
     * The deviations of a size, each step written down.
     *
     * @throws Unreadable with a plain sentence when the standard does not give the class at this size
     */
    public static ToleranceZone limits(Length nominal, ToleranceClass toleranceClass, Working working) {
        Length tolerance = StandardTolerances.of(nominal, toleranceClass.grade());
        working.fact(
                "Tolerance grade " + toleranceClass.gradeName() + " for sizes " + StandardTolerances.range(nominal),
                toleranceClass.gradeName() + " = " + Microns.say(tolerance),
                StandardTolerances.source());
        Deviation fundamental = toleranceClass.hole()
                ? HoleDeviations.of(nominal, toleranceClass, working)
                : ShaftDeviations.of(nominal, toleranceClass, working);
        ToleranceZone zone = zone(nominal, toleranceClass, fundamental, working);
        if (!nominal.plus(zone.lower()).isPositive()) {
            throw new Unreadable(toleranceClass + " takes the whole of so small a size: choose a finer class.");
        }
        return zone;
    }

    private static ToleranceZone zone(
            Length nominal, ToleranceClass toleranceClass, Deviation fundamental, Working working) {
        Length tolerance = StandardTolerances.of(nominal, toleranceClass.grade());
        Length given = fundamental.value();
        String upperName = toleranceClass.hole() ? "ES" : "es";
        String lowerName = toleranceClass.hole() ? "EI" : "ei";
        String grade = toleranceClass.gradeName();
        return switch (fundamental.end()) {
            case LOWER -> {
                Length upper = given.plus(tolerance);
                working.step(
                        "Upper deviation of " + toleranceClass,
                        upperName + " = " + lowerName + " + " + grade,
                        Microns.plain(given) + " + " + Microns.plain(tolerance),
                        Microns.signed(upper),
                        StandardTolerances.source());
                yield new ToleranceZone(nominal, toleranceClass, given, upper);
            }
            case UPPER -> {
                Length lower = given.minus(tolerance);
                working.step(
                        "Lower deviation of " + toleranceClass,
                        lowerName + " = " + upperName + " − " + grade,
                        Microns.plain(given) + " − " + Microns.plain(tolerance),
                        Microns.signed(lower),
                        StandardTolerances.source());
                yield new ToleranceZone(nominal, toleranceClass, lower, given);
            }
        };
    }
}
