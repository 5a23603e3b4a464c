package chargehand.measure;

/**
 * A length in whole nanometres, so that 1/64 in (396 875 nm), 0.0001 in (2 540 nm) and 1 µm are exact.
 *
 * <p>A length may be negative where it is a deviation or an offset. Its size is at most {@value #MOST_METRES} m either
 * way, far beyond what a shop holds and small enough that no sum of lengths overflows.
 *
 * @param nanometres the length (nm)
 */
public record Length(long nanometres) implements Comparable<Length> {
    /** Nanometres in one millimetre. */
    public static final long NM_PER_MM = 1_000_000L;

    /** Nanometres in one inch: 25.4 mm exactly (ISO 31-1 and the 1959 yard agreement). */
    public static final long NM_PER_INCH = 25_400_000L;

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    static final long MOST_METRES = 1_000L;
    static final long MOST_NANOMETRES = MOST_METRES * 1_000_000_000L;

    public Length {
        if (nanometres > MOST_NANOMETRES || nanometres < -MOST_NANOMETRES) {
            throw new OutOfRange("length must lie within ±" + MOST_METRES + " m");
        }
    }

    /** The length of so many millimetres, to the nearest nanometre; refuses NaN and infinity. */
    public static Length mm(double millimetres) {
        return new Length(rounded(millimetres, NM_PER_MM));
    }

    /** The length of so many inches, to the nearest nanometre; refuses NaN and infinity. */
    public static Length in(double inches) {
        return new Length(rounded(inches, NM_PER_INCH));
    }

    /** The length of so many thousandths of an inch. */
    public static Length thou(double thousandths) {
        return in(thousandths / 1000);
    }

    /** The length of a fraction of an inch, to the nearest nanometre; exact for 64ths. */
    public static Length inch(long numerator, long denominator) {
        return in((double) numerator / denominator);
    }

    private static long rounded(double value, long unit) {
        double nanometres = value * unit;
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("length must be a number, not " + value);
        }
        if (Math.abs(nanometres) > MOST_NANOMETRES) {
            throw new OutOfRange("length must be a number within ±" + MOST_METRES + " m, not " + value);
        }
        return Math.round(nanometres);
    }

    /** This length in millimetres. */
    public double mm() {
        return (double) nanometres / NM_PER_MM;
    }

    /** This length in inches. */
    public double in() {
        return (double) nanometres / NM_PER_INCH;
    }

    /** This length in the given unit. */
    public double in(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> mm();
            case INCH -> in();
        };
    }

    public Length plus(Length other) {
        return new Length(nanometres + other.nanometres);
    }

    public Length minus(Length other) {
        return new Length(nanometres - other.nanometres);
    }

    /** This length so many times over, to the nearest nanometre. */
    public Length times(double factor) {
        return new Length(rounded(factor * nanometres, 1));
    }

    /** Half of this length, to the nearest nanometre. */
    public Length half() {
        return times(0.5);
    }

    /** How many times {@code other} goes into this length; refuses a zero {@code other}. */
    public double over(Length other) {
        if (other.nanometres == 0) {
            throw new IllegalArgumentException("cannot compare a length with a zero length");
        }
        return (double) nanometres / other.nanometres;
    }

    public Length negated() {
        return new Length(-nanometres);
    }

    public Length abs() {
        return nanometres < 0 ? negated() : this;
    }

    public boolean isZero() {
        return nanometres == 0;
    }

    public boolean isPositive() {
        return nanometres > 0;
    }

    public boolean isNegative() {
        return nanometres < 0;
    }

    public boolean isLessThan(Length other) {
        return nanometres < other.nanometres;
    }

    public boolean isMoreThan(Length other) {
        return nanometres > other.nanometres;
    }

    /** Whether this length and {@code other} differ by no more than {@code tolerance}. */
    public boolean isWithin(Length tolerance, Length other) {
        return Math.abs(nanometres - other.nanometres) <= tolerance.nanometres;
    }

    public static Length least(Length a, Length b) {
        return a.nanometres <= b.nanometres ? a : b;
    }

    public static Length most(Length a, Length b) {
        return a.nanometres >= b.nanometres ? a : b;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /** The length in millimetres for logs and test failures; people are shown {@link LengthText}. */
    @Override
    public String toString() {
        return mm() + " mm";
    }
}
