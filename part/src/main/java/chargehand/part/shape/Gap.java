package chargehand.part.shape;

import chargehand.measure.Length;
import java.util.List;

/**
 * The least distance between two runs of straight pieces.
 *
 * @param nm the distance (nm), 0 where they cross
 * @param at a position on the first run where it is that near
 */
record Gap(double nm, Length at) {
    /** Both runs must have at least one piece. */
    static Gap between(List<Segment> first, List<Segment> second) {
        Gap least = new Gap(Double.POSITIVE_INFINITY, Length.ZERO);
        for (Segment one : first) {
            for (Segment other : second) {
                least = apart(one, other) < least.nm ? least.orNearer(one, other) : least;
            }
        }
        return least;
    }

    private Gap orNearer(Segment one, Segment other) {
        double distance = one.distance(other);
        return distance < nm ? new Gap(distance, one.from().at()) : this;
    }

    /** How far two pieces lie apart along the axis: a quick lower bound of their distance. */
    private static long apart(Segment one, Segment other) {
        return Math.max(
                0,
                Math.max(
                        one.from().z() - other.to().z(),
                        other.from().z() - one.to().z()));
    }
}
