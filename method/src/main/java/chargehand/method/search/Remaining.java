package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import java.util.BitSet;

/**
 * A bound from below on the time still needed: for each task the handling that no way of doing it avoids, and for each kind
 * of work still to do its cheapest set-up. It never exceeds the truth, so the search that uses it stays exact.
 */
final class Remaining {
    private static final double TURNING_MINUTES = 1.5;
    private static final double TURNING_EACH = 0.2;
    private static final double DIVIDING_MINUTES = 1.5;
    private static final double DIVIDING_EACH = 1.5;
    private static final double CROSS_MINUTES = 1.5;
    private static final double CROSS_EACH = 1.5;
    private static final double DEBURR_EACH = 1.2;

    /** The quickest that any lathe here traverses, mm a minute, for a bound on turning. */
    private final double fastest;

    private final int pieces;

    Remaining(double fastestMmPerMinute, int pieces) {
        this.fastest = fastestMmPerMinute;
        this.pieces = pieces;
    }

    /** The bound, in seconds for the whole count. */
    double seconds(Standing work) {
        BitSet left = work.tasks().required();
        left.andNot(work.done());
        boolean turning = false;
        boolean burrs = false;
        boolean dividing = false;
        boolean crossing = false;
        double each = 0;
        for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
            Task task = work.tasks().get(i);
            each += minutes(task);
            dividing |= isDivided(task);
            crossing |= isCrossing(task);
            turning |= !isDivided(task) && !isCrossing(task);
            burrs |= turning && !(task instanceof Task.OffTheBar);
        }
        each += (turning ? TURNING_EACH : 0)
                + (burrs ? DEBURR_EACH : 0)
                + (dividing ? DIVIDING_EACH + DEBURR_EACH : 0)
                + (crossing ? CROSS_EACH + DEBURR_EACH : 0);
        double once =
                (turning ? TURNING_MINUTES : 0) + (dividing ? DIVIDING_MINUTES : 0) + (crossing ? CROSS_MINUTES : 0);
        return 60 * (once + each * pieces);
    }

    private static boolean isDivided(Task task) {
        return task instanceof Task.Flats || task instanceof Task.Teeth;
    }

    private static boolean isCrossing(Task task) {
        return task instanceof Task.Crossing || task instanceof Task.FaceHoles;
    }

    /** What the operations of a set-up take at the least, in seconds for the whole count, loading not counted in. */
    double operations(Standing work, BitSet todo) {
        double each = 0;
        boolean burrs = false;
        for (int i = todo.nextSetBit(0); i >= 0; i = todo.nextSetBit(i + 1)) {
            Task task = work.tasks().get(i);
            each += minutes(task);
            burrs |= !(task instanceof Task.OffTheBar);
        }
        return 60 * pieces * (each + (burrs ? DEBURR_EACH : 0));
    }

    /** What a task takes at the least: changing and setting its tool, and where it is turned, going along it once. */
    private double minutes(Task task) {
        return switch (task) {
            case Task.FaceOf face -> 1;
            case Task.CentreIn centre -> 0;
            case Task.Turned turned -> along(turned.section().length());
            case Task.Corner corner -> 1.2;
            case Task.Threading thread -> 2;
            case Task.Inside inside -> 1.2;
            case Task.Teeth teeth -> 0.7 + 0.5 * teeth.section().teeth();
            case Task.FaceHoles holes -> 0.7 + 0.5 * holes.holes().circle().count();
            case Task.Flats flats -> 0.7 + 0.85 * flats.section().sides();
            case Task.Crossing crossing -> 2.2;
            case Task.InWall inWall -> 1.2;
            case Task.OffTheBar off -> 1.2;
        };
    }

    private double along(Length length) {
        return length.mm() / fastest;
    }
}
