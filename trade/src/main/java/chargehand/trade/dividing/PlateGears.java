package chargehand.trade.dividing;

import chargehand.trade.wheels.Train;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The gears of differential indexing, for the usual arrangement: the spindle gear drives, through idlers or a stud with
 * two gears, the gear on the worm's outer shaft, which turns the plate by a pair of equal bevels. On that arrangement the
 * plate goes the way of the crank with one idler in a single pair, or none in two pairs, and against it with one more.
 *
 * @param ratio turns of the plate for one turn of the spindle: positive with the crank, negative against it
 * @param spindle teeth of the gear on the spindle
 * @param stud the two gears on one stud between, if there are any
 * @param worm teeth of the gear on the worm's outer shaft
 */
public record PlateGears(BigFraction ratio, int spindle, Optional<Stud> stud, int worm) {
    /**
     * Two gears on one stud.
     *
     * @param first drives the worm's gear
     * @param second is driven by the spindle's gear
     */
    public record Stud(int first, int second) {}

    static PlateGears of(BigFraction ratio, Train train) {
        if (train.drivers().size() == 1) {
            return new PlateGears(
                    ratio,
                    train.drivers().getFirst(),
                    Optional.empty(),
                    train.driven().getFirst());
        }
        return new PlateGears(
                ratio,
                train.drivers().getLast(),
                Optional.of(new Stud(train.drivers().getFirst(), train.driven().getFirst())),
                train.driven().getLast());
    }

    /** Whether the plate turns the same way as the crank. */
    public boolean withCrank() {
        return ratio.signum() > 0;
    }

    /** How many idlers make the plate turn the right way on the usual arrangement. */
    public int idlers() {
        int forward = stud.isPresent() ? 0 : 1;
        return withCrank() ? forward : forward + 1;
    }
}
