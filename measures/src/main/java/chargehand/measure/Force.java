package chargehand.measure;

/**
 * A force.
 *
 * @param newtons the force (N), finite
 */
public record Force(double newtons) implements Comparable<Force> {
    public Force {
        Finite.number("force", newtons);
    }

    private static final double NEWTONS_PER_POUND = 4.4482216152605;

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
