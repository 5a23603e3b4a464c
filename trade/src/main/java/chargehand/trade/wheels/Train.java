package chargehand.trade.wheels;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Wheels geared together: each driver turns the driven wheel of its pair, and the driven wheel of one pair sits on the
 * same stud as the driver of the next. Which driver is put with which driven wheel does not change the ratio.
 *
 * @param drivers teeth of the driving wheels, in rising order
 * @param driven teeth of the driven wheels, as many, in rising order
 * @param gearbox turns of the leadscrew for one turn of the last driven wheel; one where there is no gearbox
 */
public record Train(List<Integer> drivers, List<Integer> driven, BigFraction gearbox) {
    public Train {
        drivers = drivers.stream().sorted().toList();
        driven = driven.stream().sorted().toList();
        if (drivers.isEmpty() || drivers.size() != driven.size()) {
            throw new IllegalArgumentException("a train is made of pairs: " + drivers + " cannot drive " + driven);
        }
        if (gearbox.signum() <= 0) {
            throw new IllegalArgumentException("a gearbox ratio is more than zero, not " + gearbox);
        }
    }

    /** A train straight onto the leadscrew. */
    public static Train of(List<Integer> drivers, List<Integer> driven) {
        return new Train(drivers, driven, BigFraction.ONE);
    }

    /** Turns of the leadscrew for one turn of the work, exactly. */
    public BigFraction ratio() {
        return BigFraction.of(product(drivers), product(driven)).multiply(gearbox);
    }

    /** How many wheels it takes, idlers not counted. */
    public int wheels() {
        return drivers.size() + driven.size();
    }

    private static BigInteger product(List<Integer> teeth) {
        return teeth.stream().map(BigInteger::valueOf).reduce(BigInteger.ONE, BigInteger::multiply);
    }

    /** The train as a turner writes it: {@code 40 / 95}, {@code (20 × 40) / (50 × 38)}. */
    @Override
    public String toString() {
        String wheels = joined(drivers) + " / " + joined(driven);
        return gearbox.equals(BigFraction.ONE) ? wheels : wheels + ", gearbox " + said(gearbox);
    }

    private static String joined(List<Integer> teeth) {
        String product = teeth.stream().map(String::valueOf).collect(Collectors.joining(" × "));
        return teeth.size() == 1 ? product : "(" + product + ")";
    }

    private static String said(BigFraction ratio) {
        return ratio.getDenominator().equals(BigInteger.ONE)
                ? ratio.getNumerator().toString()
                : ratio.getNumerator() + "/" + ratio.getDenominator();
    }
}
