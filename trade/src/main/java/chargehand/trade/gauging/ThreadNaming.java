package chargehand.trade.gauging;

import chargehand.measure.Length;
import chargehand.trade.chance.NormalCurve;
import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;
import java.util.List;

/**
 * Which listed threads a measurement may have been taken on, each with its probability.
 *
 * <p>By Bayes' rule: how often a series is met, times how likely its thread gives these readings. A diameter is the basic
 * one, short by anything from nothing to the making tolerance and the wear together, misread by a normal error. A pitch is
 * misread by a quarter of a thread to the inch, now and then by more; an angle by a gauge for another form is told from the
 * right one two times out of three at two degrees.
 */
final class ThreadNaming {
    private static final double PITCH_ERROR_TPI = 0.25;
    private static final double PITCH_ERROR_PART = 0.03;
    private static final double CARELESS_PITCH_ERROR_TPI = 0.75;
    private static final double CARELESS = 0.05;
    private static final double ANGLE_ERROR_DEGREES = 2;
    private static final double TAPER_MISJUDGED = 0.03;
    private static final double SLACK_IN_DEVIATIONS = 2;
    private static final double LEAST_DEVIATION_MM = 0.001;
    private static final double NEAR_IN_DEVIATIONS = 4;
    private static final double NEAR_IN_PITCH = 1.5;
    private static final double LEAST_SHOWN = 0.001;
    private static final int MOST_SHOWN = 12;

    private final ThreadReading reading;
    private final double readTpi;
    private final double slackMm;

    private ThreadNaming(ThreadReading reading) {
        this.reading = reading;
        this.readTpi = reading.pitch().tpi().doubleValue();
        this.slackMm = Math.max(reading.trust().slack().mm() / SLACK_IN_DEVIATIONS, LEAST_DEVIATION_MM);
    }

    /** The candidates worth showing, most likely first; none where no listed thread comes near. */
    static Weighing weigh(ThreadReading reading) {
        return new ThreadNaming(reading).weighing();
    }

    /** The candidates and the sum that their weights are parts of. */
    record Weighing(List<ThreadCandidate> candidates, double total) {}

    private record Weighed(KnownThread known, KnownThread.Crest crest, ThreadCandidate.Likelihood likelihood) {
        private double product() {
            return likelihood.product();
        }
    }

    private Weighing weighing() {
        List<Weighed> weighed = KnownThread.list().stream()
                .flatMap(known -> known
                        .crest(reading.inside())
                        .filter(crest -> isNear(known, crest))
                        .map(crest -> weigh(known, crest))
                        .stream())
                .toList();
        double total = weighed.stream().mapToDouble(Weighed::product).sum();
        List<ThreadCandidate> candidates = weighed.stream()
                .filter(one -> total > 0 && one.product() / total >= LEAST_SHOWN)
                .sorted(Comparator.comparingDouble(Weighed::product).reversed())
                .limit(MOST_SHOWN)
                .map(one -> candidate(one, one.product() / total))
                .toList();
        return new Weighing(candidates, total);
    }

    /** Whether a thread comes near the readings at all, so that a name is never made of the tails of two bells alone. */
    private boolean isNear(KnownThread known, KnownThread.Crest crest) {
        double beyond = NEAR_IN_DEVIATIONS * slackMm;
        double shortMm = shortMm(crest);
        double times = Math.max(readTpi / known.tpi(), known.tpi() / readTpi);
        return shortMm >= -beyond
                && shortMm <= mostShortMm(crest) + beyond
                && times <= NEAR_IN_PITCH
                && Math.abs(readTpi - known.tpi()) <= NEAR_IN_DEVIATIONS * CARELESS_PITCH_ERROR_TPI;
    }

    /** How far the reading falls short of a new crest; less than nought where it stands proud of it. */
    private double shortMm(KnownThread.Crest crest) {
        Length off = crest.basic().minus(reading.diameter());
        return (reading.inside() ? off.negated() : off).mm();
    }

    private double mostShortMm(KnownThread.Crest crest) {
        return crest.shortBy().plus(reading.trust().worn()).mm();
    }

    private Weighed weigh(KnownThread known, KnownThread.Crest crest) {
        ScrewThread thread = known.thread();
        var likelihood = new ThreadCandidate.Likelihood(
                known.weight(), diameter(crest), pitch(known.tpi()), angle(thread), taper(thread));
        return new Weighed(known, crest, likelihood);
    }

    private ThreadCandidate candidate(Weighed one, double probability) {
        ScrewThread thread = one.known().thread();
        return new ThreadCandidate(
                thread,
                probability,
                reading.diameter().minus(one.crest().basic()),
                reading.pitch().length().minus(thread.lead().length()),
                one.likelihood());
    }

    /** Density of the diameter: short by anything up to a most, blurred by the error of reading. */
    private double diameter(KnownThread.Crest crest) {
        double shortMm = shortMm(crest);
        double mostMm = mostShortMm(crest);
        if (mostMm < LEAST_DEVIATION_MM) {
            return NormalCurve.density(shortMm / slackMm) / slackMm;
        }
        return (NormalCurve.below(shortMm / slackMm) - NormalCurve.below((shortMm - mostMm) / slackMm)) / mostMm;
    }

    /** Likelihood of the pitch, up to a factor that all threads share. */
    private double pitch(double tpi) {
        double off = readTpi - tpi;
        double usual = Math.min(PITCH_ERROR_TPI, PITCH_ERROR_PART * readTpi);
        double careless = Math.max(CARELESS_PITCH_ERROR_TPI, usual);
        return (1 - CARELESS) * NormalCurve.density(off / usual) / usual
                + CARELESS * NormalCurve.density(off / careless) / careless;
    }

    private double angle(ScrewThread thread) {
        return reading.angle()
                .map(read -> read.degrees() - thread.form().includedAngle().degrees())
                .map(off -> NormalCurve.density(off / ANGLE_ERROR_DEGREES))
                .orElse(1.0);
    }

    private double taper(ScrewThread thread) {
        return reading.taper()
                .map(tapers -> tapers == thread.isTaper() ? 1 - TAPER_MISJUDGED : TAPER_MISJUDGED)
                .orElse(1.0);
    }
}
