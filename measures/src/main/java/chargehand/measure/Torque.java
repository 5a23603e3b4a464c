package chargehand.measure;

/**
 * A turning moment, or a bending moment.
 *
 * @param newtonMetres the moment (N·m), finite
 */
public record Torque(double newtonMetres) implements Comparable<Torque> {
    /** A pound-force at a foot of 0.3048 m. */
    private static final double NM_PER_POUND_FOOT = Force.NEWTONS_PER_POUND * 0.3048;

    public Torque {
        Finite.number("torque", newtonMetres);
    }

    public static Torque newtonMetres(double newtonMetres) {
        return new Torque(newtonMetres);
    }

    public static Torque poundFeet(double poundFeet) {
        return new Torque(poundFeet * NM_PER_POUND_FOOT);
    }

    public double poundFeet() {
        return newtonMetres / NM_PER_POUND_FOOT;
    }

    @Override
    public int compareTo(Torque other) {
        return Double.compare(newtonMetres, other.newtonMetres);
    }
}
