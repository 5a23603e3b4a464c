package chargehand.measure;

/**
 * A force.
 *
 * @param newtons the force (N), finite
 */
public record Force(double newtons) implements Comparable<Force> {
    /** 0.45359237 kg under the standard gravity of 9.80665 m/s², exactly. */
    static final double NEWTONS_PER_POUND = 4.4482216152605;

    public Force {
        Finite.number("force", newtons);
    }

    public static Force newtons(double newtons) {
        return new Force(newtons);
    }

    public static Force pounds(double poundsForce) {
        return new Force(poundsForce * NEWTONS_PER_POUND);
    }

    public double pounds() {
        return newtons / NEWTONS_PER_POUND;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
