package chargehand.part.shape;

import chargehand.measure.Length;
import java.util.List;

/**
 * The least distance between two runs of straight pieces, each in order along the axis.
 *
 * @param nm the distance (nm), 0 where they cross
 * @param at a position on the first run where it is that near
 */
record Gap(double nm, Length at) {
    /**
     * The least distance, if it is below a bound.
     *
     * @param below the bound (nm); the lower it is, the fewer pieces are looked at
     * @return a gap of {@code below} where none is less
     */
    static Gap between(List<Segment> first, List<Segment> second, double below) {
        Gap least = new Gap(below, Length.ZERO);
        for (Segment one : first) {
            int i = firstReaching(second, one.from().z() - least.nm);
            while (i < second.size() && second.get(i).from().z() <= one.to().z() + least.nm) {
                least = least.orNearer(one, second.get(i));
                i++;
            }
        }
        return least;
    }

    private Gap orNearer(Segment one, Segment other) {
        double distance = one.distance(other);
        return distance < nm ? new Gap(distance, one.from().at()) : this;
    }

    /** The index of the first piece that reaches a position (nm). */
    private static int firstReaching(List<Segment> segments, double z) {
        int low = 0;
        int high = segments.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (segments.get(middle).to().z() < z) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
