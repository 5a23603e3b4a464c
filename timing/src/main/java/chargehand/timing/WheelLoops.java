package chargehand.timing;

import java.util.List;

/** The nearest train of three pairs by trying each one in plain nested loops: the peer of the wheels search. */
record WheelLoops(List<Integer> teeth) {
    WheelLoops {
        teeth = List.copyOf(teeth);
    }

    /** The least error, as ratio made over ratio wanted less one, either way, of any train of three pairs. */
    double leastError(double wanted) {
        int[] wheels = teeth.stream().mapToInt(Integer::intValue).toArray();
        double least = Double.MAX_VALUE;
        for (int a = 0; a < wheels.length; a++) {
            for (int b = a + 1; b < wheels.length; b++) {
                for (int c = b + 1; c < wheels.length; c++) {
                    double aim = wheels[a] * wheels[b] * (double) wheels[c] / wanted;
                    least = Math.min(least, leastError(wheels, aim, 1L << a | 1L << b | 1L << c));
                }
            }
        }
        return least;
    }

    private static double leastError(int[] wheels, double aim, long taken) {
        double least = Double.MAX_VALUE;
        for (int d = 0; d < wheels.length; d++) {
            for (int e = d + 1; e < wheels.length; e++) {
                for (int f = e + 1; f < wheels.length; f++) {
                    if ((taken & (1L << d | 1L << e | 1L << f)) == 0) {
                        double error = Math.abs(aim / (wheels[d] * wheels[e] * (double) wheels[f]) - 1);
                        least = Math.min(least, error);
                    }
                }
            }
        }
        return least;
    }
}
