package chargehand.trade.packer;

import java.util.List;

/**
 * What is known of a valve: it lifts at a pressure that changes in a straight line with the packer, p = a + b (x − x0), with a
 * and b known to within a normal spread, before any test from the spring and the seat, and better after each. Bar and mm.
 */
final class ValveModel {
    /** Before any test the pressure at a packer may be anything: this many times the target. */
    private static final double VAGUE = 3;

    /** A rate known before the tests to less than this share is none to hold the tests against. */
    private static final double KNOWN = 0.3;

    private final double origin;
    private final double reading;
    private final Bell priorRate;
    private final List<Trial> trials;
    private final double level;
    private final double rate;
    private final double levelVariance;
    private final double together;
    private final double rateVariance;
    private final double misfit;

    /**
     * @param trials at least one
     * @param priorRate pressure for thickness before any test, less than nought where more packer lowers it (bar/mm)
     * @param reading standard deviation of one test: gauge and lifting together (bar)
     */
    ValveModel(List<Trial> trials, Bell priorRate, double target, double reading) {
        this.trials = List.copyOf(trials);
        this.priorRate = priorRate;
        this.reading = reading;
        origin = trials.getLast().packer();
        double vague = 1 / square(VAGUE * target);
        double sure = 1 / square(reading);
        double ofLevel = vague;
        double ofBoth = 0;
        double ofRate = 1 / square(priorRate.spread());
        double pullLevel = vague * target;
        double pullRate = ofRate * priorRate.mean();
        for (Trial trial : trials) {
            double z = trial.packer() - origin;
            ofLevel += sure;
            ofBoth += sure * z;
            ofRate += sure * z * z;
            pullLevel += sure * trial.lifted();
            pullRate += sure * z * trial.lifted();
        }
        double determinant = ofLevel * ofRate - ofBoth * ofBoth;
        levelVariance = ofRate / determinant;
        together = -ofBoth / determinant;
        rateVariance = ofLevel / determinant;
        level = levelVariance * pullLevel + together * pullRate;
        rate = together * pullLevel + rateVariance * pullRate;
        misfit = misfitOf();
    }

    private static double square(double number) {
        return number * number;
    }

    private double misfitOf() {
        boolean known = priorRate.spread() <= KNOWN * Math.abs(priorRate.mean());
        double sum = known ? square((rate - priorRate.mean()) / priorRate.spread()) : 0;
        for (Trial trial : trials) {
            sum += square((trial.lifted() - mean(trial.packer())) / reading);
        }
        return sum;
    }

    private double mean(double packer) {
        return level + rate * (packer - origin);
    }

    /** The pressure at which the valve truly lifts with this packer. */
    Bell lifts(double packer) {
        double z = packer - origin;
        double variance = levelVariance + 2 * z * together + z * z * rateVariance;
        return new Bell(mean(packer), Math.sqrt(Math.max(0, variance)) + Double.MIN_NORMAL);
    }

    /** What the gauge would read in a test with this packer. */
    Bell reads(double packer) {
        Bell lifts = lifts(packer);
        return new Bell(lifts.mean(), Math.hypot(lifts.spread(), reading));
    }

    Bell rate() {
        return new Bell(rate, Math.sqrt(rateVariance));
    }

    /** The sum of squares, in standard deviations, by which readings and spring lie off the straight line. */
    double misfit() {
        return misfit;
    }

    /** How far off the line one test lies, in standard deviations. */
    double off(Trial trial) {
        return (trial.lifted() - mean(trial.packer())) / reading;
    }

    double reading() {
        return reading;
    }
}
