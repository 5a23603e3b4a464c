package chargehand.trade.holding;

import java.util.ArrayList;
import java.util.List;

/**
 * Where work comes to rest between jaws that close together. Each jaw stops at its own reach when the work is central; the
 * jaws close until the work can move no way that lets them closer, and it may then still be free to slide along two of them.
 *
 * @param least the smallest distance of the work's axis from the chuck's (mm)
 * @param most the largest (mm)
 */
record JawSeat(double least, double most) {
    /** Jaws that stop within this of each other touch alike (mm). */
    private static final double TOUCHES = 1e-9;

    /**
     * @param reach of each jaw in turn, the jaws evenly spaced from nought (mm)
     */
    static JawSeat of(double[] reach) {
        double closed = closed(reach);
        List<double[]> ends = ends(reach, closed);
        double most = 0;
        for (double[] end : ends) {
            most = Math.max(most, Math.hypot(end[0], end[1]));
        }
        return new JawSeat(nearest(ends), most);
    }

    private static double[] jaw(int jaw, int jaws) {
        double angle = 2 * Math.PI * jaw / jaws;
        return new double[] {Math.cos(angle), Math.sin(angle)};
    }

    /**
     * The smallest opening that any place of the work allows. Work moved by d stops jaw j at reach + d · u; two jaws that
     * face each other, or three around, hold the work whatever d is, and the widest such hold decides.
     */
    private static double closed(double[] reach) {
        int jaws = reach.length;
        double widest = 0;
        for (int i = 0; i < jaws; i++) {
            if (jaws % 2 == 0) {
                widest = Math.max(widest, (reach[i] + reach[(i + jaws / 2) % jaws]) / 2);
            }
            for (int j = i + 1; j < jaws; j++) {
                for (int k = j + 1; k < jaws; k++) {
                    widest = Math.max(widest, between(reach, i, j, k));
                }
            }
        }
        return widest;
    }

    /** The mean reach of three jaws, weighed so that their pushes balance; nothing where they cannot. */
    private static double between(double[] reach, int i, int j, int k) {
        double[] a = jaw(i, reach.length);
        double[] b = jaw(j, reach.length);
        double[] c = jaw(k, reach.length);
        double onA = cross(b, c);
        double onB = cross(c, a);
        double onC = cross(a, b);
        if (onA < TOUCHES || onB < TOUCHES || onC < TOUCHES) {
            return 0;
        }
        return (onA * reach[i] + onB * reach[j] + onC * reach[k]) / (onA + onB + onC);
    }

    private static double cross(double[] a, double[] b) {
        return a[0] * b[1] - a[1] * b[0];
    }

    /** The corners of all places where the work may lie with the jaws closed. */
    private static List<double[]> ends(double[] reach, double closed) {
        int jaws = reach.length;
        var ends = new ArrayList<double[]>();
        for (int i = 0; i < jaws; i++) {
            for (int j = i + 1; j < jaws; j++) {
                double[] a = jaw(i, jaws);
                double[] b = jaw(j, jaws);
                double turn = cross(a, b);
                if (Math.abs(turn) > TOUCHES) {
                    double x = ((closed - reach[i]) * b[1] - (closed - reach[j]) * a[1]) / turn;
                    double y = ((closed - reach[j]) * a[0] - (closed - reach[i]) * b[0]) / turn;
                    if (allowed(reach, closed, x, y)) {
                        ends.add(new double[] {x, y});
                    }
                }
            }
        }
        return ends;
    }

    private static boolean allowed(double[] reach, double closed, double x, double y) {
        for (int i = 0; i < reach.length; i++) {
            double[] jaw = jaw(i, reach.length);
            if (reach[i] + x * jaw[0] + y * jaw[1] > closed + 1e3 * TOUCHES) {
                return false;
            }
        }
        return true;
    }

    /** The places lie on one point or along one line, so the nearest lies on the line between two ends. */
    private static double nearest(List<double[]> ends) {
        double nearest = Double.MAX_VALUE;
        for (double[] one : ends) {
            for (double[] other : ends) {
                double dx = other[0] - one[0];
                double dy = other[1] - one[1];
                double length = dx * dx + dy * dy;
                double along = length == 0 ? 0 : Math.clamp(-(one[0] * dx + one[1] * dy) / length, 0, 1);
                nearest = Math.min(nearest, Math.hypot(one[0] + along * dx, one[1] + along * dy));
            }
        }
        return nearest;
    }
}
