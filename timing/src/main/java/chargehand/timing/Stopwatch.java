package chargehand.timing;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

/**
 * Times of the same work done several times over.
 *
 * @param seconds by the clock
 * @param processor what this thread had of a processor meanwhile (s), which other programs do not lengthen; empty for work
 *     done by another process
 */
record Stopwatch(List<Double> seconds, List<Double> processor) {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    Stopwatch {
        seconds = seconds.stream().sorted().toList();
        processor = processor.stream().sorted().toList();
    }

    /** Does the work {@code warm} times for nothing, then {@code counted} times by the clock. */
    static Stopwatch of(int warm, int counted, Callable<?> work) throws Exception {
        for (int run = 0; run < warm; run++) {
            work.call();
        }
        var seconds = new ArrayList<Double>();
        var processor = new ArrayList<Double>();
        for (int run = 0; run < counted; run++) {
            long begun = System.nanoTime();
            long had = THREADS.getCurrentThreadCpuTime();
            work.call();
            processor.add((THREADS.getCurrentThreadCpuTime() - had) / 1e9);
            seconds.add((System.nanoTime() - begun) / 1e9);
        }
        return new Stopwatch(seconds, processor);
    }

    /** The same for work that another process does. */
    static Stopwatch outside(int warm, int counted, Callable<?> work) throws Exception {
        return new Stopwatch(of(warm, counted, work).seconds(), List.of());
    }

    double median() {
        return middle(seconds);
    }

    /** The median, and beside it what it had of a processor, such as {@code 0.231 s (0.210 s of a processor)}. */
    String text() {
        return seconds(median()) + (processor.isEmpty() ? "" : " (" + seconds(middle(processor)) + ")");
    }

    /** How often, and the worst, such as {@code 15, worst 0.150 s}. */
    String runs() {
        return seconds.size() + ", worst " + seconds(seconds.getLast());
    }

    /** The time within which this part of the runs, from 0 to 1, were done. */
    double within(double part) {
        return seconds.get(Math.min(seconds.size() - 1, (int) (part * seconds.size())));
    }

    private static double middle(List<Double> sorted) {
        return sorted.get(sorted.size() / 2);
    }

    /** A time in the unit that suits it. */
    static String seconds(double seconds) {
        return seconds < 0.1
                ? String.format(Locale.ROOT, "%.2f ms", seconds * 1e3)
                : String.format(Locale.ROOT, "%.3f s", seconds);
    }
}
