package chargehand.trade.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Pitch;
import chargehand.trade.Tree;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NameThreadSumTest {
    private static final double CALIPERS_MM = 0.05;
    private static final double WORN_MM = 0.3;
    private static final double GAUGE_TPI = 0.5;
    private static final int SIMULATED = 1000;

    private static Outcome ask(Map<String, String> ask) {
        return Asking.ask(new NameThreadSum(), ask, LengthUnit.MILLIMETRE);
    }

    private static List<?> candidates(Map<String, String> ask) {
        Map<String, Object> answer =
                FigureTree.of(((Outcome.Answered) ask(ask)).answer().figures());
        return (List<?>) Tree.at(answer, "candidates");
    }

    /** What a turner with the tables would say of readings that leave no doubt. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    11.9  | pitch=1.75 mm | M12
                    12.6  | tpi=12        | 1/2 BSW
                    12.6  | tpi=13        | 1/2-13 UNC
                    12.6  | tpi=16        | 1/2 BSF
                    7.9   | pitch=1.25 mm | M8
                    4.6   | tpi=31.4      | 2 BA
                    25.2  | tpi=8         | 1 BSW
                    41.75 | tpi=11;taper=no  | G 1 1/4
                    16.2  | tpi=19;taper=yes | R 3/8
                    29.8  | pitch=6 mm;angle=30 | Tr 30x6
                    9.45  | tpi=26;angle=60  | 3/8-26 CEI
                    9.45  | tpi=26;angle=55  | 3/8 BSB
                    """)
    void readings_withoutDoubt_nameTheThread(String diameter, String more, String thread) {
        var ask = new LinkedHashMap<String, String>();
        ask.put("diameter", diameter);
        for (String pair : more.split(";", -1)) {
            int equals = pair.indexOf('=');
            ask.put(pair.substring(0, equals), pair.substring(equals + 1));
        }

        assertThat(Tree.at(candidates(ask).getFirst(), "thread")).isEqualTo(thread);
    }

    @Test
    void nut_isNamedByItsBore() {
        List<?> candidates = candidates(Map.of("diameter", "15.1", "tpi", "19", "inside", "yes", "taper", "no"));

        assertThat(Tree.at(candidates.getFirst(), "thread")).isIn("G 3/8", "Rp 3/8");
        assertThat(Tree.number(candidates.getFirst(), "diameterOff", "mm")).isCloseTo(0.15, within(0.001));
    }

    @Test
    void probabilities_fallAndAddUpToOneAtMost() {
        List<?> candidates = candidates(Map.of("diameter", "9.4", "tpi", "25", "worn", "0.3 mm"));
        double sum = 0;
        double before = 1;
        for (Object candidate : candidates) {
            double probability = Tree.number(candidate, "probability");
            assertThat(probability).isPositive().isLessThanOrEqualTo(before);
            sum += probability;
            before = probability;
        }
        assertThat(sum).isBetween(0.98, 1 + 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"900 mm, 19", "166 mm, 11", "12 mm, 1.2", "20 mm, 40"})
    void nothingNear_isRefused(String diameter, String tpi) {
        assertThat(ask(Map.of("diameter", diameter, "tpi", tpi)))
                .isInstanceOfSatisfying(Outcome.Refused.class, refused -> {
                    assertThat(refused.field()).isEqualTo("diameter");
                    assertThat(refused.say()).contains("no listed thread");
                });
    }

    /**
     * Worn threads made up at random and read with calipers and a pitch gauge, with a form gauge and a look for taper or
     * without. Where no other listed thread could have given the readings, the right one must come first nineteen times in
     * twenty and hardly ever fall out of the first three; and the sum must do better than taking the nearest diameter.
     */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void simulatedWornThreads_areNamed(boolean formAndTaper) {
        var random = new Random(1841);
        List<KnownThread> outside = KnownThread.list().stream()
                .filter(known -> known.outside().isPresent())
                .toList();
        int apart = 0;
        int first = 0;
        int inThree = 0;
        int nearest = 0;
        for (int i = 0; i < SIMULATED; i++) {
            KnownThread truth = outside.get(random.nextInt(outside.size()));
            ThreadReading reading = misread(truth, formAndTaper, random);
            if (outside.stream().anyMatch(other -> !other.equals(truth) && allows(other, reading))) {
                continue;
            }
            apart++;
            List<ScrewThread> named = ThreadNaming.weigh(reading).candidates().stream()
                    .map(ThreadCandidate::thread)
                    .toList();
            first += named.indexOf(truth.thread()) == 0 ? 1 : 0;
            inThree += named.stream().limit(3).toList().contains(truth.thread()) ? 1 : 0;
            nearest += nearestDiameter(outside, reading).equals(truth) ? 1 : 0;
        }
        assertThat(apart).isGreaterThan(SIMULATED / 10);
        assertThat(first / (double) apart).as("first").isGreaterThanOrEqualTo(0.95);
        assertThat(inThree / (double) apart).as("in three").isGreaterThanOrEqualTo(0.99);
        assertThat(first).isGreaterThan(nearest);
    }

    private static ThreadReading misread(KnownThread truth, boolean formAndTaper, Random random) {
        double wear = random.nextDouble() * WORN_MM;
        double error = (2 * random.nextDouble() - 1) * CALIPERS_MM;
        double tpi = truth.tpi() + (2 * random.nextDouble() - 1) * GAUGE_TPI;
        ScrewThread thread = truth.thread();
        return new ThreadReading(
                Length.mm(truth.outside().orElseThrow().basic().mm() - wear + error),
                Pitch.ofTpi(String.format(Locale.ROOT, "%.2f", tpi)),
                Optional.of(thread.form().includedAngle()).filter(angle -> formAndTaper),
                Optional.of(thread.isTaper()).filter(taper -> formAndTaper),
                false,
                new ThreadReading.Trust(Length.mm(CALIPERS_MM), Length.mm(WORN_MM)));
    }

    /** Whether the tables allow a thread for the readings: its diameter, pitch, angle and taper. */
    private static boolean allows(KnownThread known, ThreadReading reading) {
        double shortMm =
                known.outside().orElseThrow().basic().minus(reading.diameter()).mm();
        double tpiOff = reading.pitch().tpi().doubleValue() - known.tpi();
        return shortMm > -CALIPERS_MM
                && shortMm < WORN_MM + CALIPERS_MM
                && Math.abs(tpiOff) <= GAUGE_TPI
                && reading.angle()
                        .map(angle -> angle.equals(known.thread().form().includedAngle()))
                        .orElse(true)
                && reading.taper()
                        .map(taper -> taper == known.thread().isTaper())
                        .orElse(true);
    }

    private static KnownThread nearestDiameter(List<KnownThread> known, ThreadReading reading) {
        return known.stream()
                .min(Comparator.comparingLong((KnownThread one) -> one.outside()
                                .orElseThrow()
                                .basic()
                                .minus(reading.diameter())
                                .abs()
                                .nanometres())
                        .thenComparingDouble(one ->
                                Math.abs(one.tpi() - reading.pitch().tpi().doubleValue())))
                .orElseThrow();
    }
}
