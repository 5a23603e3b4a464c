package chargehand.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

/** Times of the same work done several times over. */
record Stopwatch(List<Double> seconds) {
    Stopwatch {
        seconds = seconds.stream().sorted().toList();
    }

    /** Does the work {@code warm} times for nothing, then {@code counted} times by the clock. */
    static Stopwatch of(int warm, int counted, Callable<?> work) throws Exception {
        for (int run = 0; run < warm; run++) {
            work.call();
        }
        var seconds = new ArrayList<Double>();
        for (int run = 0; run < counted; run++) {
            long begun = System.nanoTime();
            work.call();
            seconds.add((System.nanoTime() - begun) / 1e9);
        }
        return new Stopwatch(seconds);
    }

    double median() {
        return seconds.get(seconds.size() / 2);
    }

    double worst() {
        return seconds.getLast();
    }

    /** The median and the worst, such as {@code 0.131 s (worst of 15: 0.150 s)}. */
    String text() {
        return seconds(median()) + " (worst of " + seconds.size() + ": " + seconds(worst()) + ")";
    }

    /** A time in the unit that suits it. */
    static String seconds(double seconds) {
        return seconds < 0.1
                ? String.format(Locale.ROOT, "%.2f ms", seconds * 1e3)
                : String.format(Locale.ROOT, "%.3f s", seconds);
    }
}
