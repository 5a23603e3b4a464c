package chargehand.trade.dividing;

import chargehand.measure.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the holes of a bolt circle lie from its middle, for a table with two dials or for marking out by a square. The first
 * hole lies straight out to the right, and they are counted against the clock.
 *
 * @param diameter through the middles of the holes
 * @param holes how many, evenly spaced
 */
record BoltCircle(Length diameter, int holes) {
    /**
     * The middle of one hole.
     *
     * @param hole its number, from 1
     * @param across to the right of the circle's middle; negative to the left
     * @param up above it; negative below
     */
    record Place(int hole, Length across, Length up) {}

    /** The places of all holes. */
    List<Place> places() {
        return IntStream.rangeClosed(1, holes).mapToObj(this::place).toList();
    }

    private Place place(int hole) {
        double turned = 2 * Math.PI * (hole - 1) / holes;
        return new Place(hole, diameter.times(Math.cos(turned) / 2), diameter.times(Math.sin(turned) / 2));
    }
}
