package chargehand.method.kit;

import chargehand.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * The feeds a machine can be set to: for each turn of the spindle on a lathe or a drill, for each minute on a mill.
 *
 * @param plate as on the machine's plate, put in rising order; empty where everything is fed by hand
 */
public record Feeds(List<Length> plate) {
    public Feeds {
        plate = plate.stream().sorted().distinct().toList();
        if (!plate.isEmpty() && !plate.getFirst().isPositive()) {
            throw new IllegalArgumentException("a feed is more than zero");
        }
    }

    /** No driven feed at all. */
    public static Feeds byHand() {
        return new Feeds(List.of());
    }

    public boolean isByHand() {
        return plate.isEmpty();
    }

    /** The coarsest feed not above {@code most}; empty where there is none or all are coarser. */
    public Optional<Length> notAbove(Length most) {
        return plate.reversed().stream().filter(feed -> !feed.isMoreThan(most)).findFirst();
    }
}
