package chargehand.trade.gauging;

import chargehand.measure.Length;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import chargehand.trade.thread.DiameterLimits;
import chargehand.trade.thread.PipeGauge;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadLimits;
import chargehand.trade.thread.ThreadSeries;
import chargehand.trade.thread.Threads;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A listed thread with what one would find on measuring it, new.
 *
 * @param thread the thread
 * @param outside where it is met outside
 * @param inside where it is met inside
 * @param tpi its threads to the inch
 * @param weight how often its series is met, beside the others
 */
record KnownThread(ScrewThread thread, Optional<Crest> outside, Optional<Crest> inside, double tpi, double weight) {
    /** Where no class gives the tolerance of the crests: the part of the pitch by which they are usually short. */
    private static final double USUAL_SHORTNESS_OF_PITCH = 0.1;

    /**
     * The diameter at the crests.
     *
     * @param basic as the form has it
     * @param shortBy how far a new one may fall short of it: made so, or tapering away
     */
    record Crest(Length basic, Length shortBy) {}

    Optional<Crest> crest(boolean isInside) {
        return isInside ? inside : outside;
    }

    /** Every listed thread whose series is met at all. */
    static List<KnownThread> list() {
        return Known.ALL;
    }

    private static KnownThread of(ScrewThread thread, double weight) {
        boolean outsideOnly = thread.series() == ThreadSeries.BSP_TAPER_OUTSIDE;
        boolean insideOnly =
                thread.series() == ThreadSeries.BSP_TAPER_INSIDE || thread.series() == ThreadSeries.BSP_PARALLEL_INSIDE;
        return new KnownThread(
                thread,
                insideOnly ? Optional.empty() : Optional.of(outside(thread)),
                outsideOnly ? Optional.empty() : Optional.of(inside(thread)),
                thread.pitch().tpi().doubleValue(),
                weight);
    }

    private static Crest outside(ScrewThread thread) {
        Optional<Length> least = ThreadLimits.find(thread)
                .flatMap(ThreadLimits::external)
                .map(DiameterLimits::major)
                .flatMap(major -> major.least());
        return new Crest(
                thread.major(),
                shortBy(thread, least.map(limit -> thread.major().minus(limit))));
    }

    private static Crest inside(ScrewThread thread) {
        Optional<Length> most = ThreadLimits.find(thread)
                .flatMap(ThreadLimits::internal)
                .map(DiameterLimits::minor)
                .flatMap(minor -> minor.most());
        return new Crest(
                thread.minorInternal(), shortBy(thread, most.map(limit -> limit.minus(thread.minorInternal()))));
    }

    private static Length shortBy(ScrewThread thread, Optional<Length> tolerance) {
        Length made = tolerance.orElseGet(() -> thread.pitch().length().times(USUAL_SHORTNESS_OF_PITCH));
        boolean tapers = thread.isTaper();
        Length taper = thread.gauge()
                .filter(gauge -> tapers)
                .map(gauge -> gauge.length().times(1 / PipeGauge.TAPER_ONE_IN))
                .orElse(Length.ZERO);
        return made.plus(taper);
    }

    private static final class Known {
        private static final List<KnownThread> ALL = read();

        private static List<KnownThread> read() {
            Map<ThreadSeries, Double> weights = new EnumMap<>(ThreadSeries.class);
            for (Row row : Table.read(KnownThread.class, "familiarity.csv").rows()) {
                weights.put(ThreadSeries.valueOf(row.text("series")), row.number("weight"));
            }
            return Threads.list().stream()
                    .filter(thread -> weights.containsKey(thread.series()))
                    .map(thread -> of(thread, weights.getOrDefault(thread.series(), 0.0)))
                    .toList();
        }
    }
}
