package chargehand.measure;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The distance from one thread to the next, kept as an exact ratio: 19 threads to the inch is 25.4/19 mm and no decimal.
 *
 * @param mm the pitch (mm), more than zero
 */
public record Pitch(BigFraction mm) implements Comparable<Pitch> {
    private static final BigFraction MM_PER_INCH = BigFraction.of(127, 5);

    public Pitch {
        if (mm.signum() <= 0) {
            throw new IllegalArgumentException("pitch must be more than zero, not " + mm + " mm");
        }
    }

    /** The pitch of so many millimetres, exact for the decimal as written: {@code ofMm("1.25")}. */
    public static Pitch ofMm(String decimal) {
        return new Pitch(Decimals.exact(decimal));
    }

    /** The pitch of so many threads to the inch, exact for the decimal as written: {@code ofTpi("4.5")}. */
    public static Pitch ofTpi(String decimal) {
        return ofTpi(Decimals.exact(decimal));
    }

    /** The pitch of so many threads to the inch. */
    public static Pitch ofTpi(int threads) {
        return ofTpi(BigFraction.of(threads));
    }

    /** The pitch of so many threads to the inch, which may be a fraction such as 11 1/2. */
    public static Pitch ofTpi(BigFraction threads) {
        if (threads.signum() <= 0) {
            throw new IllegalArgumentException("threads to the inch must be more than zero, not " + threads);
        }
        return new Pitch(MM_PER_INCH.divide(threads));
    }

    /** The pitch equal to a length. */
    public static Pitch of(Length length) {
        return new Pitch(BigFraction.of(BigInteger.valueOf(length.nanometres()), BigInteger.valueOf(Length.NM_PER_MM)));
    }

    /** The pitch as a length, to the nearest nanometre. */
    public Length length() {
        return Length.mm(mm.doubleValue());
    }

    public double inMm() {
        return mm.doubleValue();
    }

    public double inInches() {
        return mm.divide(MM_PER_INCH).doubleValue();
    }

    /** Threads to the inch, exactly. */
    public BigFraction tpi() {
        return MM_PER_INCH.divide(mm);
    }

    /** This pitch times a whole number of starts: the lead. */
    public Pitch times(int starts) {
        return new Pitch(mm.multiply(starts));
    }

    @Override
    public int compareTo(Pitch other) {
        return mm.compareTo(other.mm);
    }
}
