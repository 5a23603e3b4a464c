package chargehand.method.kit;

import chargehand.measure.Length;
import java.util.List;

/**
 * A dividing head.
 *
 * @param name what the shop calls it
 * @param worm turns of the crank for one turn of the work, such as 40
 * @param plates the index plates owned
 * @param gears the teeth of the gears owned for differential dividing, in rising order; empty where there are none
 * @param chuck on its spindle
 * @param spindleBore the largest bar that passes through it
 * @param centreHeight from the table to its axis
 * @param tailCentre whether its tail centre is there to support long work
 */
public record DividingHead(
        String name,
        int worm,
        List<Plate> plates,
        List<Integer> gears,
        Chuck chuck,
        Length spindleBore,
        Length centreHeight,
        boolean tailCentre) {
    public DividingHead {
        gears = gears.stream().sorted().toList();
        plates = List.copyOf(plates);
        if (worm < 1 || plates.isEmpty()) {
            throw new IllegalArgumentException("a dividing head has a worm and at least one plate");
        }
    }

    /**
     * An index plate.
     *
     * @param name as stamped on it, such as "1"
     * @param circles the holes of each of its circles
     */
    public record Plate(String name, List<Integer> circles) {
        public Plate {
            circles = List.copyOf(circles);
            if (circles.isEmpty() || circles.stream().anyMatch(holes -> holes < 1)) {
                throw new IllegalArgumentException("an index plate has circles of holes");
            }
        }
    }
}
