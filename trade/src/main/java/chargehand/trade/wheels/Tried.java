package chargehand.trade.wheels;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A train beside the ratio that was wanted.
 *
 * @param train the wheels
 * @param error ratio made over ratio wanted, less one; exactly zero where the train is right
 */
public record Tried(Train train, BigFraction error) {
    /**
     * Best first: the smaller error either way, then fewer wheels, then the smaller largest wheel, which is the easier
     * to find room for. What is left ties only between different wheels of equal merit and is put in the order of teeth.
     */
    public static final Comparator<Tried> BEST_FIRST = Comparator.comparing((Tried tried) -> tried.error.abs())
            .thenComparingInt(tried -> tried.train.wheels())
            .thenComparingInt(Tried::largestWheel)
            .thenComparing(tried -> tried.train.drivers().toString())
            .thenComparing(tried -> tried.train.driven().toString())
            .thenComparing(tried -> tried.train.gearbox());

    /** The train tried against a wanted ratio, more than zero. */
    public static Tried against(BigFraction wanted, Train train) {
        return new Tried(train, train.ratio().divide(wanted).subtract(1));
    }

    public boolean exact() {
        return error.signum() == 0;
    }

    private int largestWheel() {
        return Math.max(train.drivers().getLast(), train.driven().getLast());
    }
}
