package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import java.util.Locale;
import java.util.Optional;

/** Limits of general purpose Acme threads of class 2G by the formulas of ASME B1.5, in inches. */
final class AcmeTolerances {
    private static final Source SOURCE = Source.memory("ASME B1.5");
    private static final double LEAST_CREST_TOLERANCE = 0.005;

    private AcmeTolerances() {}

    static ThreadLimits limits(ScrewThread thread, String fit) {
        String written = fit.strip().toUpperCase(Locale.ROOT);
        if (!written.isEmpty() && !written.equals("2G")) {
            throw new Unreadable("'" + fit + "' is not a class of Acme thread held here: 2G is.");
        }
        double root = Math.sqrt(thread.major().in());
        double p = thread.pitch().inInches();
        Length effective = Length.in(0.030 * Math.sqrt(p) + 0.006 * root);
        Length crest = Length.in(Math.max(0.05 * p, LEAST_CREST_TOLERANCE));
        Length clearance = thread.profile().clearance().times(2);
        var external = new DiameterLimits(
                SizeLimits.below(thread.major(), crest),
                SizeLimits.below(thread.effective().minus(Length.in(0.008 * root)), effective),
                SizeLimits.below(thread.core(), effective.times(1.5)));
        var internal = new DiameterLimits(
                SizeLimits.above(thread.majorInternal(), clearance),
                SizeLimits.above(thread.effective(), effective),
                SizeLimits.above(thread.minorInternal(), crest));
        return new ThreadLimits("2G", Optional.of(external), Optional.of(internal), SOURCE);
    }
}
