package chargehand.trade.dividing;

import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** The crank alone, in one circle. */
final class PlainIndexing {
    private static final int HOW_MANY_NEAR = 3;

    private PlainIndexing() {}

    /** One way for every circle in which the crank lands on a hole. */
    static List<Way.Plain> exact(List<Integer> circles, BigFraction crank) {
        return circles.stream()
                .filter(circle -> Whole.isWhole(crank.multiply(circle)))
                .map(circle -> nearest(circle, crank))
                .toList();
    }

    /** The few circles in which a hole lies nearest to where the crank should be. */
    static List<Way.Plain> nearest(List<Integer> circles, BigFraction crank) {
        return circles.stream()
                .map(circle -> nearest(circle, crank))
                .filter(way -> way.crank().signum() > 0)
                .sorted(Comparator.comparing(way -> way.crank().subtract(crank).abs()))
                .limit(HOW_MANY_NEAR)
                .toList();
    }

    private static Way.Plain nearest(int circle, BigFraction crank) {
        return Way.Plain.of(Whole.nearest(crank.multiply(circle)), circle);
    }
}
