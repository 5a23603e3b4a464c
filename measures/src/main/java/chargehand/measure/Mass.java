package chargehand.measure;

/**
 * A mass.
 *
 * @param kilograms the mass (kg), finite
 */
public record Mass(double kilograms) implements Comparable<Mass> {
    /** The pound of the 1959 yard and pound agreement, exactly. */
    private static final double KG_PER_POUND = 0.45359237;

    public Mass {
        Finite.number("mass", kilograms);
    }

    public static Mass kilograms(double kilograms) {
        return new Mass(kilograms);
    }

    public static Mass pounds(double pounds) {
        return new Mass(pounds * KG_PER_POUND);
    }

    public double pounds() {
        return kilograms / KG_PER_POUND;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
