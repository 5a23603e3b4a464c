package chargehand.measure;

/**
 * How hard a spring pushes back for each millimetre.
 *
 * @param newtonsPerMm the rate (N/mm), finite
 */
public record SpringRate(double newtonsPerMm) implements Comparable<SpringRate> {
    /** A pound-force to an inch of 25.4 mm. */
    private static final double PER_POUND_PER_INCH = Force.NEWTONS_PER_POUND / 25.4;

    public SpringRate {
        Finite.number("spring rate", newtonsPerMm);
    }

    public static SpringRate newtonsPerMm(double newtonsPerMm) {
        return new SpringRate(newtonsPerMm);
    }

    public static SpringRate poundsPerInch(double poundsPerInch) {
        return new SpringRate(poundsPerInch * PER_POUND_PER_INCH);
    }

    public double poundsPerInch() {
        return newtonsPerMm / PER_POUND_PER_INCH;
    }

    @Override
    public int compareTo(SpringRate other) {
        return Double.compare(newtonsPerMm, other.newtonsPerMm);
    }
}
