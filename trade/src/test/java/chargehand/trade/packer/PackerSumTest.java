package chargehand.trade.packer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.LengthUnit;
import chargehand.measure.Pressure;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.Tree;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Sums;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PackerSumTest {
    private static double rate(Ask ask) {
        return ((Figure.OfPressureRate) ask.figure("rate")).rate().barPerMm();
    }

    private static double bar(Ask ask, String path) {
        return ask.megapascals(path) * 10;
    }

    /** One test tells nothing of the rate, so the rate is that of spring and seat. */
    @TestFactory
    Stream<DynamicTest> rateOfSpringAndSeat() {
        return PublishedRow.of("relief-valve.json", "set_vs_compression").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Ask ask = Ask.of(
                            "packer",
                            "target",
                            row.text("set_MPa") + " MPa",
                            "tolerance",
                            "0.1 bar",
                            "most",
                            "20 bar",
                            "trials",
                            "2 mm:2.5 bar",
                            "seat",
                            row.text("seat_d_mm") + " mm",
                            "spring",
                            row.text("k_N_mm") + " N/mm");
                    assertThat(rate(ask)).isCloseTo(row.want("bar_per_mm"), row.within("bar_per_mm"));
                }));
    }

    /** From a lower pressure to a higher one the packer grows by the change of pressure over the rate, dx = dp A / k. */
    @TestFactory
    Stream<DynamicTest> changeForANewPressure() {
        return PublishedRow.of("relief-valve.json", "reset").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Ask ask = Ask.of(
                            "packer",
                            "target",
                            row.text("p_new") + " MPa",
                            "tolerance",
                            "0.3 bar",
                            "most",
                            "20 MPa",
                            "trials",
                            "2 mm:" + row.text("p_old") + " MPa",
                            "seat",
                            row.text("seat_d") + " mm",
                            "spring",
                            row.text("k") + " N/mm",
                            "step",
                            "0.001 mm",
                            "gauge",
                            "0.01 bar");
                    // The side that can be skimmed is preferred, so a little more than the straight answer.
                    assertThat(ask.mm("change"))
                            .isBetween(row.want("extra_compression") - 0.001, row.want("extra_compression") + 0.2);
                }));
    }

    @Test
    void model_manyTests_isTheLeastSquaresLine() {
        var random = new Random(3);
        var trials = new ArrayList<Trial>();
        for (int i = 0; i < 40; i++) {
            double packer = 1 + 0.05 * i;
            trials.add(new Trial(packer, 5 + 0.9 * packer + 0.01 * random.nextGaussian()));
        }
        var model = new ValveModel(trials, new Bell(1, 100), 7, 0.01);
        double meanX = trials.stream().mapToDouble(Trial::packer).average().orElseThrow();
        double meanY = trials.stream().mapToDouble(Trial::lifted).average().orElseThrow();
        double top = 0;
        double bottom = 0;
        for (Trial trial : trials) {
            top += (trial.packer() - meanX) * (trial.lifted() - meanY);
            bottom += (trial.packer() - meanX) * (trial.packer() - meanX);
        }
        assertThat(model.rate().mean()).isCloseTo(top / bottom, within(1e-6));
        assertThat(model.rate().spread()).isCloseTo(0.01 / Math.sqrt(bottom), within(1e-6));
        assertThat(model.lifts(meanX).mean()).isCloseTo(meanY, within(1e-5));
    }

    @Test
    void model_eachTest_narrowsWhatIsKnown() {
        var trials = new ArrayList<>(List.of(new Trial(2, 6)));
        double before = Double.MAX_VALUE;
        for (int i = 1; i < 6; i++) {
            trials.add(new Trial(2 + 0.1 * i, 6 + 0.1 * i));
            double spread =
                    new ValveModel(trials, new Bell(1, 0.15), 7, 0.05).rate().spread();
            assertThat(spread).isLessThan(before);
            before = spread;
        }
    }

    /**
     * Invented valves set from the first test on: never proposed past the limit, and in few tests. The valves differ from what
     * spring and seat say, as real ones do.
     */
    @Test
    void simulatedValves_areSetInFewerTestsThanByHand_andNeverPassTheLimit() {
        Simulated ours = simulated(PackerSumTest::ours);
        Simulated hand = simulated(PackerSumTest::byHand);

        assertThat(ours.peak()).isLessThanOrEqualTo(AIM.most()).isLessThanOrEqualTo(hand.peak());
        assertThat(ours.tests()).isLessThan(3).isLessThan(hand.tests());
    }

    /** What setting many valves took: tests for each on the average, and the highest pressure of any test. */
    private record Simulated(double tests, double peak) {}

    private static Simulated simulated(Function<List<Trial>, Optional<Double>> rule) {
        var random = new Random(20_260_401);
        int valves = 300;
        int tests = 0;
        double peak = 0;
        for (int i = 0; i < valves; i++) {
            double rate = 0.95 * Math.exp(0.12 * random.nextGaussian());
            double start = 5.5 + random.nextDouble();
            var trials = new ArrayList<Trial>();
            Optional<Double> packer = Optional.of(2.0);
            while (packer.isPresent() && trials.size() < 12) {
                double lifted = start + rate * (packer.get() - 2) + 0.035 * random.nextGaussian();
                trials.add(new Trial(packer.get(), lifted));
                peak = Math.max(peak, lifted);
                packer = rule.apply(trials);
            }
            tests += trials.size();
        }
        return new Simulated((double) tests / valves, peak);
    }

    private static Optional<Double> ours(List<Trial> trials) {
        var model = new ValveModel(trials, new Bell(0.955, 0.143), AIM.target(), 0.043);
        return new Setting(model, AIM, trials).verdict() instanceof Verdict.GoOn(var next)
                ? Optional.of(next.thickness())
                : Optional.empty();
    }

    /** Common practice: half a millimetre to begin with, then by proportion from the last two tests. */
    private static Optional<Double> byHand(List<Trial> trials) {
        Trial last = trials.getLast();
        if (AIM.isInside(last.lifted())) {
            return Optional.empty();
        }
        double change = 0.5;
        if (trials.size() > 1) {
            Trial before = trials.get(trials.size() - 2);
            double rate = (last.lifted() - before.lifted()) / (last.packer() - before.packer());
            change = (AIM.target() - last.lifted()) / rate;
        }
        return Optional.of(last.packer() + AIM.step() * Math.round(change / AIM.step()));
    }

    private static final PackerAim AIM = new PackerAim(7, 0.15, 7.6, true, 0.02);

    @Test
    void next_upperBand_neverPassesTheMost() {
        for (double most = 7.05; most < 8; most += 0.05) {
            var aim = new PackerAim(7, 0.15, most, true, 0.02);
            List<Trial> trials = List.of(new Trial(2, 6.2));
            var model = new ValveModel(trials, new Bell(1.75, 0.7), 7, 0.05);
            if (new Setting(model, aim, trials).verdict() instanceof Verdict.GoOn(var next)) {
                assertThat(next.reads().high()).isLessThanOrEqualTo(most);
            }
        }
    }

    @Test
    void packer_prefersTheSideThatCanBeSkimmed() {
        Ask adds = Ask.of(
                "packer",
                "target",
                "7 bar",
                "tolerance",
                "0.1 bar",
                "most",
                "9 bar",
                "trials",
                "2 mm:6 bar",
                "seat",
                "20 mm",
                "spring",
                "30 N/mm");
        Ask takes = Ask.of(
                "packer",
                "target",
                "7 bar",
                "tolerance",
                "0.1 bar",
                "most",
                "9 bar",
                "trials",
                "2 mm:8 bar",
                "seat",
                "20 mm",
                "spring",
                "30 N/mm",
                "adds",
                "no");

        assertThat(bar(adds, "expect.pressure")).isGreaterThan(7);
        assertThat(bar(takes, "expect.pressure")).isLessThan(7);
        assertThat(takes.mm("change")).isPositive();
        assertThat(rate(takes)).isNegative();
    }

    @Test
    void packer_insideAlready_saysStop() {
        Ask ask = Ask.of(
                "packer",
                "target",
                "150 psi",
                "tolerance",
                "3 psi",
                "most",
                "165 psi",
                "trials",
                "1.50 mm:138 psi; 1.80 mm:150 psi");

        assertThat(ask.text("stop")).contains("inside");
        assertThat(ask.mm("change")).isZero();
        assertThat(ask.number("testsLeft")).isZero();
    }

    @Test
    void packer_readingsThatDoNotFit_areNotFitted() {
        Ask sticking = Ask.of(
                "packer",
                "target",
                "150 psi",
                "tolerance",
                "2 psi",
                "most",
                "165 psi",
                "trials",
                "1.50:130 psi; 1.50:141 psi");
        Ask backwards = Ask.of(
                "packer",
                "target",
                "150 psi",
                "tolerance",
                "2 psi",
                "most",
                "165 psi",
                "trials",
                "1.50:140 psi; 1.90:125 psi");

        assertThat(sticking.text("stop")).contains("sticking");
        assertThat(sticking.has("packer")).isFalse();
        assertThat(backwards.text("stop")).contains("wrong way");
        assertThat(backwards.has("packer")).isFalse();
    }

    @Test
    void packer_aTestPastTheLimit_saysStop() {
        Ask ask = Ask.of(
                "packer", "target", "150 psi", "tolerance", "2 psi", "most", "165 psi", "trials", "1.50:170 psi");

        assertThat(ask.text("stop")).contains("competent person");
        assertThat(ask.has("packer")).isFalse();
    }

    @Test
    void packer_springByItsWire_isThatOfItsRate() {
        // G d⁴ / (8 D³ n) = 79300 × 256 / (8 × 13824 × 6) = 30.59 N/mm
        String[] rest = {
            "target",
            "7 bar",
            "tolerance",
            "0.2 bar",
            "most",
            "8 bar",
            "trials",
            "2 mm:6 bar",
            "seat",
            "20 mm",
            "spring"
        };
        Ask wire = Ask.of("packer", with(rest, "wire 4 mm mean 24 mm coils 6"));
        Ask rate = Ask.of("packer", with(rest, "30.5942 N/mm"));

        assertThat(rate(wire)).isCloseTo(rate(rate), within(1e-4));
    }

    private static String[] with(String[] rest, String last) {
        return Stream.concat(Stream.of(rest), Stream.of(last)).toArray(String[]::new);
    }

    @Test
    void packer_trialsAsObjects_areReadFromAStream() {
        var ask = Map.of(
                "target",
                "7 bar",
                "tolerance",
                "0.2 bar",
                "most",
                "8 bar",
                "seat",
                20,
                "spring",
                Map.of("wire", 4, "mean", 24, "coils", 6),
                "trials",
                List.of(Map.of("packer", 2, "lifted", "6 bar"), Map.of("packer", 2.5, "lifted", "6.5 bar")));
        Map<String, Object> tree = Sums.load().answer(Map.of("sum", "packer", "ask", ask), LengthUnit.MILLIMETRE);

        double pressure = Tree.number(tree, "answer", "expect", "pressure", "bar");
        assertThat(pressure).isBetween(6.8, 7.3);
        assertThat(Pressure.bar(pressure).psi()).isGreaterThan(90);
    }

    @Test
    void packer_wronglyAsked_isRefusedBesideItsField() {
        String[] rest = {"target", "7 bar", "tolerance", "0.2 bar", "trials", "2:6 bar", "most"};
        Ask.of("packer", with(rest, "6.9 bar")).isRefusedAt("most", "above the target");
        Ask.of("packer", "target", "7 bar").isRefusedAt("tolerance", "needed");
        Ask.of("packer", "target", "7 bar", "tolerance", "8 bar", "most", "9 bar", "trials", "2:6 bar")
                .isRefusedAt("tolerance", "well below");
        Ask.of("packer", "target", "7 bar", "tolerance", "0.1 bar", "most", "9 bar", "trials", "2 mm")
                .isRefusedAt("trials", "lifted");
        Ask.of("packer", "target", "7 bar", "tolerance", "0.1 bar", "most", "9 bar", "trials", "2:6 bar", "seat", "20")
                .isRefusedAt("spring", "only together");
    }
}
