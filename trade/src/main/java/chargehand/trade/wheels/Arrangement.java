package chargehand.trade.wheels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A train in the order it is set up, from the spindle stud to the leadscrew.
 *
 * @param pairs wheels in mesh; the driven wheel of one shares a stud with the driver of the next
 * @param idler a wheel of any size between the two of a single pair
 */
public record Arrangement(List<Pair> pairs, Optional<Integer> idler) {
    /**
     * Two wheels of a train.
     *
     * @param driver teeth of the wheel that drives
     * @param driven teeth of the wheel that is driven
     */
    public record Pair(int driver, int driven) {}

    public Arrangement {
        pairs = List.copyOf(pairs);
    }

    static Arrangement of(List<Integer> drivers, List<Integer> driven) {
        var pairs = new ArrayList<Pair>();
        for (int i = 0; i < drivers.size(); i++) {
            pairs.add(new Pair(drivers.get(i), driven.get(i)));
        }
        return new Arrangement(pairs, Optional.empty());
    }

    /** The order in words: {@code 20 drives 50; with it on the stud 40 drives 38, on the leadscrew}. */
    @Override
    public String toString() {
        return pairs.stream()
                        .map(pair -> pair.driver() + " drives " + pair.driven())
                        .collect(Collectors.joining("; with it on the stud "))
                + ", on the leadscrew"
                + idler.map(teeth -> ", through an idler of " + teeth).orElse("");
    }
}
