package chargehand.trade.strength;

/**
 * The stress function of a twisted hexagon of one across flats, as a third way to its constants. It is −(x² + y²)/2 and
 * harmonic functions of the hexagon's own symmetry: the real parts of z⁶ᵏ, and one that bends as the solution does in the
 * corners of 120°, where it goes with the distance to the power of one and a half. Their shares are chosen so that the
 * function is nothing on a side; since it is harmonic apart from the first term, it is then right within.
 */
final class HexagonStressFunction {
    private static final int SIDES = 6;
    private static final int POWERS = 6;
    private static final int UNKNOWNS = POWERS + 1;
    private static final double APOTHEM = 0.5;
    private static final double HALF_SIDE = APOTHEM * Math.tan(Math.PI / SIDES);
    private static final double TO_CORNER = APOTHEM / Math.cos(Math.PI / SIDES);
    private static final double CORNER_POWER = 1.5;
    private static final int STEPS = 400;

    private final double[] shares;

    HexagonStressFunction() {
        var rows = new double[UNKNOWNS][];
        for (int i = 0; i < UNKNOWNS; i++) {
            double y = HALF_SIDE * Math.sin((i + 0.5) * Math.PI / (2 * UNKNOWNS));
            rows[i] = new double[UNKNOWNS + 1];
            for (int k = 0; k < UNKNOWNS; k++) {
                rows[i][k] = harmonic(k, APOTHEM, y);
            }
            rows[i][UNKNOWNS] = (APOTHEM * APOTHEM + y * y) / 2;
        }
        shares = solved(rows);
    }

    private static double harmonic(int k, double x, double y) {
        double radius = Math.hypot(x, y) / TO_CORNER;
        double angle = Math.atan2(y, x);
        return k < POWERS ? Math.pow(radius, SIDES * k) * Math.cos(SIDES * k * angle) : corners(radius, angle);
    }

    private static double corners(double radius, double angle) {
        double sum = 0;
        for (int corner = 0; corner < SIDES; corner++) {
            double from = angle - (corner + 0.5) * 2 * Math.PI / SIDES;
            double along = 1 - radius * Math.cos(from);
            double across = -radius * Math.sin(from);
            sum += Math.pow(Math.hypot(along, across), CORNER_POWER)
                    * Math.cos(CORNER_POWER * Math.atan2(across, along));
        }
        return sum;
    }

    /** Gauss's elimination, the largest pivot first. */
    private static double[] solved(double[][] rows) {
        for (int k = 0; k < rows.length; k++) {
            for (int i = k + 1; i < rows.length; i++) {
                if (Math.abs(rows[i][k]) > Math.abs(rows[k][k])) {
                    double[] swapped = rows[i];
                    rows[i] = rows[k];
                    rows[k] = swapped;
                }
            }
            for (int i = 0; i < rows.length; i++) {
                double times = i == k ? 0 : rows[i][k] / rows[k][k];
                for (int j = k; j <= rows.length; j++) {
                    rows[i][j] -= times * rows[k][j];
                }
            }
        }
        var found = new double[rows.length];
        for (int k = 0; k < rows.length; k++) {
            found[k] = rows[k][rows.length] / rows[k][k];
        }
        return found;
    }

    private double at(double x, double y) {
        double value = -(x * x + y * y) / 2;
        for (int k = 0; k < UNKNOWNS; k++) {
            value += shares[k] * harmonic(k, x, y);
        }
        return value;
    }

    /** What is left on a side, where there should be nothing. */
    double greatestOnTheSides() {
        double most = 0;
        for (int i = 0; i <= STEPS; i++) {
            most = Math.max(most, Math.abs(at(APOTHEM, HALF_SIDE * i / STEPS)));
        }
        return most;
    }

    /** Twice the volume under the function: twelve half triangles, by Simpson's rule both ways. */
    double torsionConstant() {
        double volume = 0;
        for (int i = 0; i <= STEPS; i++) {
            double x = APOTHEM * i / STEPS;
            double top = HALF_SIDE * i / STEPS;
            double strip = 0;
            for (int j = 0; j <= STEPS; j++) {
                strip += simpson(j) * at(x, top * j / STEPS);
            }
            volume += simpson(i) * strip * top / STEPS / 3;
        }
        return 2 * 2 * SIDES * volume * APOTHEM / STEPS / 3;
    }

    private static int simpson(int i) {
        return i == 0 || i == STEPS ? 1 : i % 2 == 0 ? 2 : 4;
    }

    /** The torsion constant over the slope in the middle of a side, where it is steepest. */
    double torsionModulus() {
        double step = 1e-4;
        double slope = (4 * at(APOTHEM - step, 0) - at(APOTHEM - 2 * step, 0) - 3 * at(APOTHEM, 0)) / (2 * step);
        return torsionConstant() / slope;
    }
}
