package chargehand.timing;

import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadSeries;
import chargehand.trade.thread.Threads;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Naming a worn thread beside taking the listed one of the nearest diameter, and among those of one diameter the nearest
 * pitch. Threads are drawn evenly from the lists, worn and misread as calipers and a pitch gauge misread.
 */
final class NameThreadTimes {
    private static final int THREADS = 2_000;
    private static final int SEED = 1841;

    /** What is met outside on old machinery; threads met only inside cannot be measured over their crests. */
    private static final Set<ThreadSeries> DRAWN = EnumSet.of(
            ThreadSeries.METRIC_COARSE,
            ThreadSeries.METRIC_FINE,
            ThreadSeries.UNC,
            ThreadSeries.UNF,
            ThreadSeries.BSW,
            ThreadSeries.BSF,
            ThreadSeries.BSP,
            ThreadSeries.BA);

    private static final Set<ThreadSeries> INSIDE_ONLY =
            EnumSet.of(ThreadSeries.BSP_TAPER_INSIDE, ThreadSeries.BSP_PARALLEL_INSIDE);

    private final AskedSum sum = AskedSum.named("name-thread");
    private final List<ScrewThread> tables = Threads.list().stream()
            .filter(thread -> !INSIDE_ONLY.contains(thread.series()))
            .toList();
    private final List<ScrewThread> drawn =
            tables.stream().filter(thread -> DRAWN.contains(thread.series())).toList();

    private NameThreadTimes() {}

    static List<Measured> measured() throws Exception {
        return new NameThreadTimes().times();
    }

    private List<Measured> times() throws Exception {
        var random = new Random(SEED);
        List<WornThread> worn = random.ints(THREADS, 0, drawn.size())
                .mapToObj(number -> WornThread.of(drawn.get(number), random))
                .toList();
        Stopwatch one = Stopwatch.of(50, 101, () -> named(worn.getFirst(), false));
        return List.of(
                Measured.of("name-thread: one worn thread named, warm", one),
                all(worn),
                apart("diameter and pitch read", worn, false),
                apart("form and taper looked at too", worn, true));
    }

    /** Of all of them: many are alike within their wear, so that no rule could name each. */
    private Measured all(List<WornThread> worn) {
        var tally = new Tally();
        worn.forEach(each -> tally.add(each, named(each, false), drawn));
        return Measured.of("name-thread: " + THREADS + " simulated worn threads, diameter and pitch read", tally.text())
                .beside(tally.nearest() + "; the most that any rule could, knowing how they are drawn and from what: "
                        + tally.percent(tally.possible));
    }

    /** Of those alone that the tables allow only one thread for. */
    private Measured apart(String what, List<WornThread> worn, boolean looked) {
        var tally = new Tally();
        worn.stream()
                .filter(each -> tables.stream()
                                .filter(thread -> each.allows(thread, looked))
                                .count()
                        == 1)
                .forEach(each -> tally.add(each, named(each, looked), drawn));
        return Measured.of(
                        "name-thread: those " + tally.count + " of them that only one listed thread agrees with, "
                                + what,
                        tally.text())
                .aim("95 % first, 99 % in the first three")
                .beside(tally.nearest());
    }

    /** The designations that the sum answers, most likely first. */
    private List<String> named(WornThread worn, boolean looked) {
        return AskedSum.list(sum.answer(worn.ask(looked)), "candidates").stream()
                .map(candidate -> String.valueOf(((Map<?, ?>) candidate).get("thread")))
                .toList();
    }

    private static final class Tally {
        private int count;
        private int first;
        private int inThree;
        private int nearest;
        private double possible;

        private void add(WornThread worn, List<String> named, List<ScrewThread> drawn) {
            int place = named.indexOf(worn.truth().designation());
            count++;
            first += place == 0 ? 1 : 0;
            inThree += place >= 0 && place < 3 ? 1 : 0;
            nearest += worn.nearest(drawn).equals(worn.truth()) ? 1 : 0;
            possible += worn.chanceAtBest(drawn);
        }

        private String text() {
            return percent(first) + " first, " + percent(inThree) + " in the first three";
        }

        private String nearest() {
            return "nearest diameter, then nearest pitch: " + percent(nearest);
        }

        private String percent(double part) {
            return String.format(Locale.ROOT, "%.1f %%", 100 * part / Math.max(1, count));
        }
    }
}
