package chargehand.measure;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A ratio of two like things, kept exactly as written: a taper of 1 in 48, a gear of 2:1, three quarters of a depth.
 *
 * @param exact the ratio, a plain number
 */
public record Ratio(BigFraction exact) implements Comparable<Ratio> {
    private static final int MOST_BITS = 200;

    public Ratio {
        if (exact.getNumerator().bitLength() > MOST_BITS
                || exact.getDenominator().bitLength() > MOST_BITS) {
            throw new OutOfRange("a ratio has at most sixty figures above and below");
        }
    }

    /** The ratio of one whole number to another; refuses a nought below. */
    public static Ratio of(long top, long bottom) {
        return new Ratio(BigFraction.of(BigInteger.valueOf(top), BigInteger.valueOf(bottom)));
    }

    /** The ratio as a plain number. */
    public double value() {
        return exact.doubleValue();
    }

    @Override
    public int compareTo(Ratio other) {
        return exact.compareTo(other.exact);
    }
}
