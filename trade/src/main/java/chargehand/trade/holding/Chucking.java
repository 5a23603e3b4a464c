package chargehand.trade.holding;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * How work sits in a chuck whose jaws close together, over every way of turning it before it is gripped.
 *
 * @param best the way that runs truest
 * @param worst the way that runs out most
 * @param evenest the way in which the jaws stop most nearly alike
 */
record Chucking(Way best, Way worst, Way evenest) {
    /** Jaws that stop as nearly alike as this bear alike: less than any shop dial shows (mm). */
    static final double ALIKE = 0.002;

    private static final int WAYS = 240;

    /** Just to either side of where a corner comes under the edge of a jaw (radians). */
    private static final double BESIDE = 1e-7;

    /**
     * One way of turning the work before gripping it.
     *
     * @param reach how far from the chuck's axis each jaw would stop on central work (mm)
     * @param seat where the work comes to rest
     */
    record Way(List<Double> reach, JawSeat seat) {
        double spread() {
            return values().max().orElse(0) - values().min().orElse(0);
        }

        private DoubleStream values() {
            return reach.stream().mapToDouble(Double::doubleValue);
        }
    }

    static Chucking of(Outline outline, int jaws, double jawWidth) {
        List<Way> ways = turns(outline, jaws, jawWidth).stream()
                .map(turned -> way(outline, jaws, jawWidth, turned))
                .toList();
        var byLeast = Comparator.comparingDouble((Way way) -> way.seat().least());
        var byMost = Comparator.comparingDouble((Way way) -> way.seat().most());
        return new Chucking(
                ways.stream().min(byLeast).orElseThrow(),
                ways.stream().max(byMost).orElseThrow(),
                ways.stream().min(Comparator.comparingDouble(Way::spread)).orElseThrow());
    }

    /** Total indicator reading of the best way (mm). */
    double runoutLeast() {
        return 2 * best.seat().least();
    }

    /** Total indicator reading of the worst way (mm). */
    double runoutMost() {
        return 2 * worst.seat().most();
    }

    /** Whether there is a way in which all jaws bear alike. */
    boolean isEven() {
        return evenest.spread() <= ALIKE;
    }

    private static Way way(Outline outline, int jaws, double jawWidth, double turned) {
        var reach = new double[jaws];
        for (int i = 0; i < jaws; i++) {
            // The jaws stand at equal parts of a turn; only what is left of a whole tooth tells.
            double part = Math.IEEEremainder(2 * Math.PI * i / jaws, 2 * Math.PI / outline.repeats());
            reach[i] = outline.reach(turned - part, jawWidth / 2);
        }
        return new Way(DoubleStream.of(reach).boxed().toList(), JawSeat.of(reach));
    }

    /** Evenly through one tooth, and beside every place where what a jaw meets changes. */
    private static TreeSet<Double> turns(Outline outline, int jaws, double jawWidth) {
        double pitch = 2 * Math.PI / outline.repeats();
        var turns = new TreeSet<Double>();
        for (int i = 0; i < WAYS; i++) {
            turns.add(pitch * i / WAYS);
        }
        List<Outline.Corner> corners =
                outline.corners().subList(0, outline.corners().size() / outline.repeats());
        for (int jaw = 0; jaw < jaws; jaw++) {
            for (Outline.Corner corner : corners) {
                double edge = Math.asin(Math.min(1, jawWidth / 2 / corner.radius()));
                for (double off : new double[] {0, -edge, edge}) {
                    double under = 2 * Math.PI * jaw / jaws - corner.angle() + off;
                    turns.add(within(under, pitch));
                    turns.add(within(under + BESIDE, pitch));
                    turns.add(within(under - BESIDE, pitch));
                }
            }
        }
        return turns;
    }

    private static double within(double angle, double pitch) {
        return angle - pitch * Math.floor(angle / pitch);
    }
}
