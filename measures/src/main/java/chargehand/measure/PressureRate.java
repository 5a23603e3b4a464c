package chargehand.measure;

/**
 * How much a pressure changes for each millimetre of packer.
 *
 * @param barPerMm the rate (bar/mm), finite
 */
public record PressureRate(double barPerMm) implements Comparable<PressureRate> {
    /** The psi of {@link Pressure} in a bar of 0.1 MPa. */
    private static final double PSI_PER_BAR = 0.1 / Pressure.MPA_PER_PSI;

    private static final double THOU_PER_MM = 1000 / 25.4;

    public PressureRate {
        Finite.number("pressure per thickness", barPerMm);
    }

    public static PressureRate barPerMm(double barPerMm) {
        return new PressureRate(barPerMm);
    }

    public static PressureRate psiPerThou(double psiPerThou) {
        return new PressureRate(psiPerThou / PSI_PER_BAR * THOU_PER_MM);
    }

    public double psiPerThou() {
        return barPerMm * PSI_PER_BAR / THOU_PER_MM;
    }

    @Override
    public int compareTo(PressureRate other) {
        return Double.compare(barPerMm, other.barPerMm);
    }
}
