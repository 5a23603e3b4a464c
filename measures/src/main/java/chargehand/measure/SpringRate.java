package chargehand.measure;

/**
 * How hard a spring pushes back for each millimetre.
 *
 * @param newtonsPerMm the rate (N/mm), finite
 */
public record SpringRate(double newtonsPerMm) implements Comparable<SpringRate> {
    public SpringRate {
        Finite.number("spring rate", newtonsPerMm);
    }

    private static final double PER_POUND_PER_INCH = 4.4482216152605 / 25.4;

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
