package chargehand.trade.gear;

/** A normal scatter of several readings about nought, some of them moving together. */
final class Scatter {
    private final double[][] lower;

    /**
     * @param spread the covariance, positive definite
     */
    Scatter(double[][] spread) {
        int count = spread.length;
        lower = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = spread[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(rest) : rest / lower[j][j];
            }
        }
    }

    /** The readings in independent parts, each in its own standard deviations. */
    private double[] parts(double[] off) {
        var parts = new double[off.length];
        for (int i = 0; i < off.length; i++) {
            double rest = off[i];
            for (int k = 0; k < i; k++) {
                rest -= lower[i][k] * parts[k];
            }
            parts[i] = rest / lower[i][i];
        }
        return parts;
    }

    /** Sum of squares in standard deviations: about one a reading where the readings fit. */
    double misfit(double[] off) {
        return product(parts(off), parts(off));
    }

    /** The logarithm of the density, but for a constant that only the number of readings sets. */
    double logDensity(double[] off) {
        double log = -misfit(off) / 2;
        for (int i = 0; i < off.length; i++) {
            log -= Math.log(lower[i][i]);
        }
        return log;
    }

    /** How far the readings lie along a direction, each weighed by how sure it is. */
    double along(double[] direction, double[] off) {
        return product(parts(direction), parts(off));
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
