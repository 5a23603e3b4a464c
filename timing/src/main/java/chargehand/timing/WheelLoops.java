package chargehand.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The trains nearest to a ratio by trying every one in plain nested loops: the peer of the wheels search. */
final class WheelLoops {
    private final int[] wheels;
    private final int howMany;
    private final double wanted;
    private final List<Nearest> best = new ArrayList<>();
    private double widest = Double.MAX_VALUE;

    /**
     * A train of the wheels at these places in the set, by whichever way round each pair is met first.
     *
     * @param drivers places of the driving wheels, as bits
     * @param driven places of the driven wheels, as bits
     * @param error ratio made over ratio wanted less one, either way
     */
    record Nearest(long drivers, long driven, double error) {}

    /**
     * The best so many.
     *
     * @param wheels teeth, no two wheels alike
     * @param wanted ratio of drivers to driven
     */
    private WheelLoops(List<Integer> wheels, double wanted, int howMany) {
        this.wheels = wheels.stream().mapToInt(Integer::intValue).toArray();
        this.wanted = wanted;
        this.howMany = howMany;
    }

    /** By six loops, one for each wheel, and so also every order of the same wheels. */
    static List<Nearest> everyOrder(List<Integer> wheels, double wanted, int howMany) {
        var loops = new WheelLoops(wheels, wanted, howMany);
        loops.pairs(3, 1, 0, 0, false);
        return loops.best;
    }

    /** By loops over rising wheels, so that each train is tried once. */
    static List<Nearest> everyTrain(List<Integer> wheels, double wanted, int howMany) {
        var loops = new WheelLoops(wheels, wanted, howMany);
        for (int pairs = 1; pairs <= 3; pairs++) {
            loops.drivers(pairs, 0, 1, 0);
        }
        return loops.best;
    }

    private void pairs(int left, double ratio, long drivers, long driven, boolean offer) {
        if (offer) {
            offer(ratio, drivers, driven);
        }
        if (left == 0) {
            return;
        }
        for (int a = 0; a < wheels.length; a++) {
            if (((drivers | driven) & 1L << a) != 0) {
                continue;
            }
            for (int b = 0; b < wheels.length; b++) {
                if (a != b && ((drivers | driven) & 1L << b) == 0) {
                    pairs(left - 1, ratio * wheels[a] / wheels[b], drivers | 1L << a, driven | 1L << b, true);
                }
            }
        }
    }

    private void drivers(int left, int from, double product, long drivers) {
        if (left == 0) {
            driven(Long.bitCount(drivers), 0, product, drivers, 0);
            return;
        }
        for (int a = from; a < wheels.length; a++) {
            drivers(left - 1, a + 1, product * wheels[a], drivers | 1L << a);
        }
    }

    private void driven(int left, int from, double ratio, long drivers, long driven) {
        if (left == 0) {
            offer(ratio, drivers, driven);
            return;
        }
        for (int b = from; b < wheels.length; b++) {
            if ((drivers & 1L << b) == 0) {
                driven(left - 1, b + 1, ratio / wheels[b], drivers, driven | 1L << b);
            }
        }
    }

    private void offer(double ratio, long drivers, long driven) {
        double error = Math.abs(ratio / wanted - 1);
        if (error >= widest) {
            return;
        }
        if (best.stream().anyMatch(one -> one.drivers == drivers && one.driven == driven)) {
            return;
        }
        best.add(new Nearest(drivers, driven, error));
        best.sort(Comparator.comparingDouble(Nearest::error));
        if (best.size() > howMany) {
            best.removeLast();
        }
        if (best.size() == howMany) {
            widest = best.getLast().error();
        }
    }
}
