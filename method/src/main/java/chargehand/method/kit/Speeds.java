package chargehand.method.kit;

import chargehand.measure.SpindleSpeed;
import java.util.List;
import java.util.Optional;

/**
 * The speeds a spindle can be set to.
 *
 * @param plate as on the machine's plate, put in rising order, at least one, all more than zero
 */
public record Speeds(List<SpindleSpeed> plate) {
    public Speeds {
        plate = plate.stream().sorted().distinct().toList();
        if (plate.isEmpty() || plate.getFirst().rpm() <= 0) {
            throw new IllegalArgumentException("a spindle has at least one speed, and all are more than zero");
        }
    }

    public SpindleSpeed slowest() {
        return plate.getFirst();
    }

    public SpindleSpeed fastest() {
        return plate.getLast();
    }

    /** The fastest speed not above {@code most}; empty where even the slowest is too fast. */
    public Optional<SpindleSpeed> notAbove(SpindleSpeed most) {
        return plate.reversed().stream()
                .filter(speed -> speed.compareTo(most) <= 0)
                .findFirst();
    }
}
