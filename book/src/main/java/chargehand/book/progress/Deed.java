package chargehand.book.progress;

import chargehand.measure.Written;
import java.util.Optional;

/** What was done at one step. */
public sealed interface Deed {
    /** Where it was done. */
    StepAt at();

    /** The operation is done. */
    record Ticked(StepAt at) implements Deed {}

    /** The tick was a slip. */
    record Unticked(StepAt at) implements Deed {}

    /**
     * A size was measured.
     *
     * @param reading which of the operation's readings, from 1
     * @param size what was read
     * @param corrects the number of the entry that this one puts right, if it does
     */
    record Measured(StepAt at, int reading, Written size, Optional<Integer> corrects) implements Deed {}

    /** Someone else looked at the readings of a hold point and passed them. */
    record HoldPassed(StepAt at) implements Deed {}
}
