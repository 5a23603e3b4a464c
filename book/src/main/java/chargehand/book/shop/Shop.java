package chargehand.book.shop;

import chargehand.book.job.JobNumber;
import chargehand.measure.LengthUnit;

/**
 * The shop whose book this is.
 *
 * @param name what it is called
 * @param unit the unit a bare number is read in
 * @param firstJob the number the first job gets, so that a shop can carry on from its paper book
 */
public record Shop(String name, LengthUnit unit, JobNumber firstJob) {
    /** A shop that has not said anything of itself yet. */
    public static final Shop NEW = new Shop("The shop", LengthUnit.MILLIMETRE, new JobNumber(1));

    public Shop {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a shop has a name");
        }
    }
}
