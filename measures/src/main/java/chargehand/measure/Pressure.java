package chargehand.measure;

/**
 * A pressure or a stress.
 *
 * @param megapascals the pressure (MPa, which is N/mm²), finite
 */
public record Pressure(double megapascals) implements Comparable<Pressure> {
    /** A pound-force on a square inch of 645.16 mm². */
    static final double MPA_PER_PSI = Force.NEWTONS_PER_POUND / 645.16;

    private static final double MPA_PER_BAR = 0.1;

    public Pressure {
        Finite.number("pressure", megapascals);
    }

    public static Pressure megapascals(double megapascals) {
        return new Pressure(megapascals);
    }

    public static Pressure bar(double bar) {
        return new Pressure(bar * MPA_PER_BAR);
    }

    public static Pressure psi(double psi) {
        return new Pressure(psi * MPA_PER_PSI);
    }

    public double bar() {
        return megapascals / MPA_PER_BAR;
    }

    public double psi() {
        return megapascals / MPA_PER_PSI;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(megapascals, other.megapascals);
    }
}
