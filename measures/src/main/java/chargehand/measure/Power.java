package chargehand.measure;

/**
 * Power at the spindle.
 *
 * @param watts the power (W), finite
 */
public record Power(double watts) implements Comparable<Power> {
    /** 550 foot pounds-force in a second. */
    private static final double WATTS_PER_HORSEPOWER = 550 * 0.3048 * Force.NEWTONS_PER_POUND;

    public Power {
        Finite.number("power", watts);
    }

    public static Power watts(double watts) {
        return new Power(watts);
    }

    public static Power horsepower(double horsepower) {
        return new Power(horsepower * WATTS_PER_HORSEPOWER);
    }

    public double kilowatts() {
        return watts / 1000;
    }

    public double horsepower() {
        return watts / WATTS_PER_HORSEPOWER;
    }

    @Override
    public int compareTo(Power other) {
        return Double.compare(watts, other.watts);
    }
}
