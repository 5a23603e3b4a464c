package chargehand.measure;

/**
 * A temperature; a difference of temperatures is a plain number of kelvins.
 *
 * @param celsius the temperature (°C), finite
 */
public record Temperature(double celsius) implements Comparable<Temperature> {
    public Temperature {
        Finite.number("temperature", celsius);
    }

    public static Temperature celsius(double celsius) {
        return new Temperature(celsius);
    }

    public static Temperature fahrenheit(double fahrenheit) {
        return new Temperature((fahrenheit - 32) / 1.8);
    }

    public double fahrenheit() {
        return celsius * 1.8 + 32;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }
}
