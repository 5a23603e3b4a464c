package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.kit.Gauge;
import chargehand.method.kit.Tooling;
import chargehand.method.plan.Reading;
import java.util.Comparator;

/** Picks what to measure with: the coarsest gauge owned that still splits the tolerance finely enough. */
final class Gauges {
    /** A gauge should show at least this many divisions within the tolerance (common practice: one tenth, at worst one quarter). */
    private static final double DIVISIONS_IN_TOLERANCE = 4;

    private final Tooling tooling;

    Gauges(Tooling tooling) {
        this.tooling = tooling;
    }

    /** A reading of an outside size or a length. */
    Reading outside(String what, Limits limits) {
        return new Reading(what, limits, pick(limits, Gauge.Measures.OUTSIDE));
    }

    /** A reading of a bore. */
    Reading inside(String what, Limits limits) {
        String plug = tooling.gauges(Gauge.Plug.class).stream()
                .filter(gauge -> limits.contain(gauge.size()))
                .map(Gauge.Plug::name)
                .findFirst()
                .orElseGet(() -> pick(limits, Gauge.Measures.INSIDE));
        return new Reading(what, limits, plug);
    }

    private String pick(Limits limits, Gauge.Measures side) {
        Length finest = Length.mm(limits.tolerance().mm() / DIVISIONS_IN_TOLERANCE);
        return tooling.gauges(Gauge.Reads.class).stream()
                .filter(gauge -> reaches(gauge, limits.most(), side))
                .filter(gauge -> !gauge.resolves().isMoreThan(finest))
                .max(Comparator.comparing(Gauge.Reads::resolves))
                .or(() -> tooling.gauges(Gauge.Reads.class).stream()
                        .filter(gauge -> reaches(gauge, limits.most(), side))
                        .min(Comparator.comparing(Gauge.Reads::resolves)))
                .map(Gauge::name)
                .orElse("what the shop has; none of the gauges listed reaches");
    }

    private static boolean reaches(Gauge.Reads gauge, Length size, Gauge.Measures side) {
        return switch (gauge) {
            case Gauge.Rule rule -> side != Gauge.Measures.INSIDE && !size.isMoreThan(rule.longest());
            case Gauge.Caliper caliper -> !size.isMoreThan(caliper.longest());
            case Gauge.Micrometer micrometer ->
                micrometer.side() == side && micrometer.range().contain(size);
            case Gauge.Indicator indicator -> false;
        };
    }
}
