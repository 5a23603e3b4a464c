package chargehand.trade.strength;

/**
 * Torsion of a hexagon by Prandtl's membrane, as a second way to its constants: the stress function, whose Laplacian is −2
 * and which is nothing on the sides, relaxed on a net of equilateral triangles. Six neighbours stand about every knot, so
 * that the mean of them less the knot is a quarter of h² times the Laplacian.
 */
final class HexagonMembrane {
    private static final double OVER_RELAXATION = 1.9;
    private static final int SWEEPS = 1500;

    private final int side;
    private final double[][] height;

    /** A net with so many triangles along each side of the hexagon. */
    HexagonMembrane(int side) {
        this.side = side;
        height = new double[2 * side + 1][2 * side + 1];
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            relax();
        }
    }

    /** Whether the knot at these skew coordinates lies inside: |q|, |r| and |q + r| less than the side. */
    private boolean inside(int q, int r) {
        return Math.max(Math.max(Math.abs(q), Math.abs(r)), Math.abs(q + r)) < side;
    }

    private double at(int q, int r) {
        return height[q + side][r + side];
    }

    private void relax() {
        for (int q = 1 - side; q < side; q++) {
            for (int r = 1 - side; r < side; r++) {
                if (inside(q, r)) {
                    double mean = (at(q + 1, r)
                                    + at(q - 1, r)
                                    + at(q, r + 1)
                                    + at(q, r - 1)
                                    + at(q + 1, r - 1)
                                    + at(q - 1, r + 1))
                            / 6;
                    double settled = mean + 0.5;
                    height[q + side][r + side] += OVER_RELAXATION * (settled - at(q, r));
                }
            }
        }
    }

    /** Across flats, in units of the net. */
    private double flats() {
        return side * Math.sqrt(3);
    }

    /** Twice the volume under the membrane, for a hexagon of one across flats. */
    double torsionConstant() {
        double volume = 0;
        for (double[] row : height) {
            for (double each : row) {
                volume += each * Math.sqrt(3) / 2;
            }
        }
        return 2 * volume / Math.pow(flats(), 4);
    }

    /** The torsion constant over the steepest slope, which is in the middle of a side. */
    double torsionModulus() {
        int middle = side / 2;
        double step = Math.sqrt(3) / 2;
        double first = (at(side - 1, -middle) + at(side - 1, -middle + 1)) / 2;
        double second = at(side - 2, -middle + 1);
        double slope = (4 * first - second) / (2 * step) / flats();
        return torsionConstant() / slope;
    }
}
