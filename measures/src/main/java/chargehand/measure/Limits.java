package chargehand.measure;

import java.util.Optional;

/**
 * The least and the most that a size may be.
 *
 * @param least the lower limit, included
 * @param most the upper limit, included, not less than {@code least}
 */
public record Limits(Length least, Length most) {
    public Limits {
        if (most.isLessThan(least)) {
            throw new IllegalArgumentException("upper limit " + most + " lies below lower limit " + least);
        }
    }

    /** The limits of a nominal size with its two deviations, as on a drawing: {@code 25 -0.020/-0.041}. */
    public static Limits of(Length nominal, Length lowerDeviation, Length upperDeviation) {
        return new Limits(nominal.plus(lowerDeviation), nominal.plus(upperDeviation));
    }

    /** The limits of a nominal size that may be off by the same either way. */
    public static Limits plusMinus(Length nominal, Length deviation) {
        return of(nominal, deviation.negated(), deviation);
    }

    /** The room between the limits. */
    public Length tolerance() {
        return most.minus(least);
    }

    /** The size half-way between the limits: what a turner aims at. */
    public Length middle() {
        return least.plus(tolerance().half());
    }

    /**
     * The widest limits at whole steps that lie within these, so that nothing good by them is bad by these; nothing when
     * no whole step lies between.
     *
     * @param step what a dial or a gauge reads to, more than nought
     */
    public Optional<Limits> inward(Length step) {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("step must be more than nought, not " + step);
        }
        long lower = Math.ceilDiv(least.nanometres(), step.nanometres());
        long upper = Math.floorDiv(most.nanometres(), step.nanometres());
        return lower > upper
                ? Optional.empty()
                : Optional.of(new Limits(new Length(lower * step.nanometres()), new Length(upper * step.nanometres())));
    }

    public boolean contain(Length size) {
        return !size.isLessThan(least) && !size.isMoreThan(most);
    }
}
