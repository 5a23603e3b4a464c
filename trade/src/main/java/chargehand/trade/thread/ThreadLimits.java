package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import java.util.Optional;

/**
 * What the diameters of a thread may be in one class of fit.
 *
 * @param fit the class as it is written, such as {@code 6g/6H}, {@code 2A/2B}, {@code medium/normal}
 * @param external limits of the outside thread, where the rule is held here
 * @param internal limits of the inside thread, where the rule is held here
 * @param source the rule
 */
public record ThreadLimits(
        String fit, Optional<DiameterLimits> external, Optional<DiameterLimits> internal, Source source) {

    /** The limits in the class that is meant when none is named; none where no rule is held for such a thread. */
    public static Optional<ThreadLimits> find(ScrewThread thread) {
        return find(thread, "");
    }

    /**
     * The limits in a named class.
     *
     * @param fit the class, or blank for the usual one
     * @throws Unreadable when the thread's standard has no such class
     */
    public static Optional<ThreadLimits> find(ScrewThread thread, String fit) {
        if (thread.starts() > 1 && thread.form() != ThreadForm.TRAPEZOIDAL) {
            return none(thread, fit);
        }
        return switch (thread.form()) {
            case ISO_METRIC -> MetricTolerances.find(thread, fit);
            case UNIFIED -> Optional.of(UnifiedTolerances.limits(thread, fit));
            case WHITWORTH -> Optional.of(WhitworthTolerances.limits(thread, fit));
            case WHITWORTH_PIPE ->
                thread.series() == ThreadSeries.BSP
                        ? Optional.of(PipeTolerances.limits(thread, fit))
                        : none(thread, fit);
            case BRITISH_ASSOCIATION -> Optional.of(BritishAssociationTolerances.limits(thread, fit));
            case ACME -> Optional.of(AcmeTolerances.limits(thread, fit));
            case TRAPEZOIDAL -> TrapezoidalTolerances.find(thread, fit);
            case CYCLE, SQUARE -> none(thread, fit);
        };
    }

    private static Optional<ThreadLimits> none(ScrewThread thread, String fit) {
        if (!fit.isBlank()) {
            throw new Unreadable("no classes of fit are held here for " + thread + ": leave the class out.");
        }
        return Optional.empty();
    }
}
