package chargehand.timing;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadSeries;
import chargehand.trade.thread.Threads;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;

/**
 * Naming a worn thread beside taking the listed one of the nearest diameter, and among those of one diameter the nearest
 * pitch. Threads are drawn evenly from the lists, worn and misread as calipers and a pitch gauge misread.
 */
final class NameThreadTimes {
    private static final int THREADS = 1_000;
    private static final int SEED = 1841;
    private static final double MOST_WORN_MM = 0.3;
    private static final double CALIPERS_MM = 0.05;
    private static final double GAUGE_TPI = 0.5;

    /** What is met outside on old machinery; threads met only inside cannot be measured over their crests. */
    private static final Set<ThreadSeries> SERIES = EnumSet.of(
            ThreadSeries.METRIC_COARSE,
            ThreadSeries.METRIC_FINE,
            ThreadSeries.UNC,
            ThreadSeries.UNF,
            ThreadSeries.BSW,
            ThreadSeries.BSF,
            ThreadSeries.BSP,
            ThreadSeries.BA);

    private NameThreadTimes() {}

    private record Reading(ScrewThread truth, double diameterMm, double tpi) {
        static Reading of(ScrewThread truth, Random random) {
            double worn = random.nextDouble() * MOST_WORN_MM;
            double misread = (2 * random.nextDouble() - 1) * CALIPERS_MM;
            double tpi = pitchTpi(truth) + (2 * random.nextDouble() - 1) * GAUGE_TPI;
            return new Reading(truth, truth.major().mm() - worn + misread, tpi);
        }

        /** What a person would write down, wear and doubt included. */
        Map<String, String> ask() {
            return Map.of(
                    "diameter", String.format(Locale.ROOT, "%.2f mm", diameterMm),
                    "tpi", String.format(Locale.ROOT, "%.1f", tpi),
                    "worn", MOST_WORN_MM + " mm");
        }

        boolean isNearestDiameter(List<ScrewThread> listed) {
            ScrewThread nearest = listed.stream()
                    .min(Comparator.comparingDouble(
                                    (ScrewThread one) -> Math.abs(one.major().mm() - diameterMm))
                            .thenComparingDouble(one -> Math.abs(pitchTpi(one) - tpi)))
                    .orElseThrow();
            return nearest.equals(truth);
        }
    }

    static List<Measured> measured() throws Exception {
        Sum sum = Sums.load().find("name-thread").orElseThrow();
        List<ScrewThread> listed = Threads.list().stream()
                .filter(thread -> SERIES.contains(thread.series()))
                .toList();
        var random = new Random(SEED);
        List<Reading> readings = random.ints(THREADS, 0, listed.size())
                .mapToObj(number -> Reading.of(listed.get(number), random))
                .toList();
        int first = 0;
        int inThree = 0;
        int nearest = 0;
        for (Reading reading : readings) {
            int place = named(sum, reading).indexOf(reading.truth().designation());
            first += place == 0 ? 1 : 0;
            inThree += place >= 0 && place < 3 ? 1 : 0;
            nearest += reading.isNearestDiameter(listed) ? 1 : 0;
        }
        Stopwatch one = Stopwatch.of(20, 101, () -> named(sum, readings.getFirst()));
        return List.of(
                Measured.of("name-thread: one worn thread named, warm", one),
                Measured.of(
                                "name-thread: of " + THREADS + " simulated worn threads, the right one first",
                                percent(first) + "; in the first three " + percent(inThree))
                        .beside("nearest diameter, then nearest pitch: " + percent(nearest)));
    }

    private static double pitchTpi(ScrewThread thread) {
        return thread.pitch().tpi().doubleValue();
    }

    private static String percent(int count) {
        return String.format(Locale.ROOT, "%.1f %%", 100.0 * count / THREADS);
    }

    /** The designations that the sum answers, most likely first. */
    private static List<String> named(Sum sum, Reading reading) {
        return switch (Asking.ask(sum, reading.ask(), LengthUnit.MILLIMETRE)) {
            case Outcome.Answered answered -> {
                Map<String, Object> tree = FigureTree.of(answered.answer().figures());
                List<?> candidates = (List<?>) Objects.requireNonNull(tree.get("candidates"));
                yield candidates.stream()
                        .map(candidate -> String.valueOf(((Map<?, ?>) candidate).get("thread")))
                        .toList();
            }
            case Outcome.Refused refused -> throw new IllegalStateException(refused.say());
        };
    }
}
