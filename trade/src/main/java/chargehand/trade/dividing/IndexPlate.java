package chargehand.trade.dividing;

import java.util.List;

/**
 * A hole plate.
 *
 * @param circles how many holes each of its circles has, in rising order, none twice
 */
public record IndexPlate(List<Integer> circles) {
    /** More holes than any circle has. */
    public static final int MOST_HOLES = 1000;

    public IndexPlate {
        circles = circles.stream().sorted().distinct().toList();
        if (circles.isEmpty() || circles.getFirst() < 1 || circles.getLast() > MOST_HOLES) {
            throw new IllegalArgumentException("a plate has circles of 1 to " + MOST_HOLES + " holes, not " + circles);
        }
    }

    public static IndexPlate of(Integer... circles) {
        return new IndexPlate(List.of(circles));
    }
}
