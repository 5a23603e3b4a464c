package chargehand.timing;

import chargehand.method.plan.Planned;
import chargehand.method.search.PlainMethod;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** How planning grows with the part, and how good its methods are beside those of a planner that never looks ahead. */
final class PlanTimes {
    private static final List<Integer> FEATURES = List.of(5, 10, 20, 40);
    private static final int PARTS_OF_A_SIZE = 8;
    private static final int RANDOM_PARTS = 60;
    private static final int WARM = 2;
    private static final int RUNS = 5;
    private static final long SEED = 20261125;

    private final Planner planner;
    private final List<DemoWorkshop.Drawn> drawn;

    private PlanTimes(DemoWorkshop workshop) {
        this.planner = new Planner(workshop.kit(), workshop.rack());
        this.drawn = workshop.drawn();
    }

    static List<Measured> measured(Path demo) throws Exception {
        var times = new PlanTimes(DemoWorkshop.read(demo));
        var lines = new ArrayList<Measured>(times.growth());
        lines.add(times.besideFixedOrder());
        return lines;
    }

    private List<Measured> growth() throws Exception {
        var lines = new ArrayList<Measured>();
        Map<Integer, Double> seconds = new LinkedHashMap<>();
        for (int features : FEATURES) {
            var random = new Random(SEED);
            var parts = new ArrayList<Part>();
            for (int i = 0; i < PARTS_OF_A_SIZE; i++) {
                parts.add(SteppedPart.of(features, random));
            }
            Stopwatch watch = Stopwatch.of(
                    WARM,
                    RUNS,
                    () -> parts.stream().map(part -> planner.plan(part, 1)).toList());
            seconds.put(features, watch.median());
            lines.add(Measured.of("plan: " + PARTS_OF_A_SIZE + " stepped spindles of " + features + " features", watch)
                    .beside(found(parts)));
        }
        lines.add(Measured.of(
                "plan: growth with the number of features",
                String.format(Locale.ROOT, "with its power of %.1f", power(seconds))));
        return lines;
    }

    private String found(List<Part> parts) {
        long weighed = 0;
        int ready = 0;
        int quickest = 0;
        for (Part part : parts) {
            if (planner.plan(part, 1) instanceof Planned.Ready method) {
                weighed += method.weighed();
                ready++;
                quickest += method.bound().isQuickest() ? 1 : 0;
            }
        }
        return ready + " planned, " + quickest + " of them by the quickest method weighed, of " + weighed + " set-ups";
    }

    /** The slope of the straight line that lies nearest to the logarithms. */
    private static double power(Map<Integer, Double> seconds) {
        double sumX = 0;
        double sumY = 0;
        double sumXx = 0;
        double sumXy = 0;
        for (Map.Entry<Integer, Double> each : seconds.entrySet()) {
            double x = Math.log(each.getKey());
            double y = Math.log(each.getValue());
            sumX += x;
            sumY += y;
            sumXx += x * x;
            sumXy += x * y;
        }
        int n = seconds.size();
        return (n * sumXy - sumX * sumY) / (n * sumXx - sumX * sumX);
    }

    /** Times counted with the minute for each place down the list of stock, as the search counts them. */
    private Measured besideFixedOrder() throws IOException {
        var ratios = new ArrayList<Double>();
        var random = new Random(SEED);
        int planned = 0;
        int worse = 0;
        var parts = new ArrayList<>(drawn);
        for (int i = 0; i < RANDOM_PARTS; i++) {
            parts.add(new DemoWorkshop.Drawn(SteppedPart.of(4 + random.nextInt(9), random), 1 + i % 3));
        }
        for (DemoWorkshop.Drawn each : parts) {
            if (planner.plan(each.part(), each.count()) instanceof Planned.Ready ready) {
                planned++;
                Optional<PlainMethod> plain = planner.inFixedOrder(each.part(), each.count());
                if (plain.isPresent()) {
                    double ratio = plain.get().counted().seconds()
                            / ready.bound().counted().seconds();
                    ratios.add(ratio);
                    worse += ratio < 1 - 1e-9 ? 1 : 0;
                }
            }
        }
        double mean = ratios.stream().mapToDouble(ratio -> ratio).average().orElse(1);
        double most = ratios.stream().mapToDouble(ratio -> ratio).max().orElse(1);
        return Measured.of(
                        "method: time by a fixed order, without looking ahead, over time by the search",
                        String.format(Locale.ROOT, "%.3f on average, %.2f at the most", mean, most))
                .beside(String.format(
                        Locale.ROOT,
                        "%d parts planned, the fixed order makes %d of them; the search takes longer on %d",
                        planned,
                        ratios.size(),
                        worse));
    }
}
