package chargehand.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Setting valves by packers beside the hand rule: half a millimetre to begin with, then by proportion from the last two tests,
 * until a test reads inside (common practice). The same invented valves for both, with the same luck. Bar and mm.
 */
final class PackerTimes {
    private static final int VALVES = 500;
    private static final int MOST_TESTS = 12;
    private static final int SEED = 1856;
    private static final double TARGET = 7;
    private static final double TOLERANCE = 0.15;
    private static final double MOST = 7.6;
    private static final double STEP = 0.02;
    private static final double FIRST_PACKER = 2;
    private static final double HAND_CHANGE = 0.5;

    /** A sound valve lifts again to half a per cent, and a gauge is read to 0.025 bar, one standard deviation each. */
    private static final double LIFTS_AGAIN = 0.035;

    private static final double READ = 0.025;

    private PackerTimes() {}

    /** One test: the packer, the pressure at which the valve lifted, and what the gauge read of it. */
    private record Test(double packer, double lifted, double read) {}

    /** What a rule says after some tests. */
    private sealed interface Said {
        record Make(double packer) implements Said {}

        record Passed() implements Said {}

        record GivenUp() implements Said {}
    }

    /** A valve that lifts at {@code first} with the first packer, and so much higher for each millimetre. */
    private record Valve(double first, double rate, long luck) {
        double lifts(double packer) {
            return first + rate * (packer - FIRST_PACKER);
        }
    }

    private static final class Tally {
        private int tests;
        private int passed;
        private int falsely;
        private int pastLimit;
        private double peak;

        private void set(Valve valve, Function<List<Test>, Said> rule) {
            var random = new Random(valve.luck());
            var done = new ArrayList<Test>();
            Said said = new Said.Make(FIRST_PACKER);
            while (said instanceof Said.Make(double packer) && done.size() < MOST_TESTS) {
                double lifted = valve.lifts(packer) + LIFTS_AGAIN * random.nextGaussian();
                done.add(new Test(packer, lifted, lifted + READ * random.nextGaussian()));
                said = rule.apply(done);
            }
            tests += done.size();
            double highest = done.stream().mapToDouble(Test::lifted).max().orElseThrow();
            peak = Math.max(peak, highest);
            pastLimit += highest > MOST ? 1 : 0;
            if (said instanceof Said.Passed) {
                passed++;
                falsely += Math.abs(valve.lifts(done.getLast().packer()) - TARGET) > TOLERANCE ? 1 : 0;
            }
        }

        private String text() {
            return String.format(
                    Locale.ROOT,
                    "%.2f tests a valve; highest %.2f bar, %d past %.1f; %d passed, %d of them falsely",
                    (double) tests / VALVES,
                    peak,
                    pastLimit,
                    MOST,
                    passed,
                    falsely);
        }
    }

    static List<Measured> measured() throws Exception {
        var random = new Random(SEED);
        // 30 N/mm on a seat of 20 mm is 0.955 bar/mm; a real spring and seat differ from their sizes by a tenth or so.
        List<Valve> known = valves(random, from -> 0.955 * Math.exp(0.12 * from.nextGaussian()));
        // Springs shorten some 2 to 15 mm to the set pressure.
        List<Valve> unknown = valves(random, from -> TARGET / (2 + 13 * from.nextDouble()));
        AskedSum sum = AskedSum.named("packer");
        Map<String, String> spring = Map.of("seat", "20 mm", "spring", "30 N/mm");
        var oneTest = List.of(new Test(FIRST_PACKER, 6, 6));
        Stopwatch one = Stopwatch.of(20, 51, () -> ours(sum, spring, oneTest));
        return List.of(
                Measured.of("packer: the next packer after one test, warm", one),
                beside("spring and seat known", known, done -> ours(sum, spring, done)),
                beside("nothing known of the spring", unknown, done -> ours(sum, Map.of(), done)));
    }

    private static List<Valve> valves(Random random, ToDoubleFunction<Random> rate) {
        var valves = new ArrayList<Valve>();
        for (int i = 0; i < VALVES; i++) {
            valves.add(new Valve(5.5 + random.nextDouble(), rate.applyAsDouble(random), random.nextLong()));
        }
        return valves;
    }

    private static Measured beside(String what, List<Valve> valves, Function<List<Test>, Said> rule) {
        var ours = new Tally();
        var hand = new Tally();
        for (Valve valve : valves) {
            ours.set(valve, rule);
            hand.set(valve, PackerTimes::byHand);
        }
        return Measured.of(
                        "packer: " + VALVES + " simulated valves set to 7 bar within 0.15, never past 7.6, " + what,
                        ours.text())
                .beside("by hand: " + hand.text());
    }

    private static Said ours(AskedSum sum, Map<String, String> spring, List<Test> done) {
        var ask = new HashMap<>(spring);
        ask.put("target", TARGET + " bar");
        ask.put("tolerance", TOLERANCE + " bar");
        ask.put("most", MOST + " bar");
        ask.put("step", STEP + " mm");
        ask.put("gauge", 2 * READ + " bar");
        ask.put(
                "trials",
                done.stream()
                        .map(test -> String.format(Locale.ROOT, "%.3f mm:%.3f bar", test.packer(), test.read()))
                        .collect(Collectors.joining("; ")));
        Map<String, Object> answer = sum.answer(ask);
        if (!answer.containsKey("packer")) {
            return new Said.GivenUp();
        }
        return answer.containsKey("stop") ? new Said.Passed() : new Said.Make(AskedSum.number(answer, "packer", "mm"));
    }

    private static Said byHand(List<Test> done) {
        Test last = done.getLast();
        if (Math.abs(last.read() - TARGET) <= TOLERANCE) {
            return new Said.Passed();
        }
        double change = before(done)
                .map(before ->
                        (TARGET - last.read()) * (last.packer() - before.packer()) / (last.read() - before.read()))
                .orElse(HAND_CHANGE);
        double packer = Math.max(0, last.packer() + STEP * Math.round(change / STEP));
        return Double.isFinite(packer) && packer != last.packer() ? new Said.Make(packer) : new Said.GivenUp();
    }

    private static Optional<Test> before(List<Test> done) {
        return done.size() < 2 ? Optional.empty() : Optional.of(done.get(done.size() - 2));
    }
}
