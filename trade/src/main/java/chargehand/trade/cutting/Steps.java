package chargehand.trade.cutting;

import java.util.List;

/** Choosing from the steps that a machine has. */
final class Steps {
    private Steps() {}

    /** The largest step not above what is wanted; the smallest where all are above; what is wanted where there are none. */
    static <T extends Comparable<T>> T notAbove(List<T> rising, T wanted) {
        if (rising.isEmpty()) {
            return wanted;
        }
        return rising.reversed().stream()
                .filter(step -> step.compareTo(wanted) <= 0)
                .findFirst()
                .orElseGet(rising::getFirst);
    }
}
