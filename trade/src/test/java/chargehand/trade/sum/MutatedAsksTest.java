package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Fifty thousand asks, each a sum's own example with something done to it: every one is answered within the range of its
 * rule, or refused in a plain sentence. A line that took for ever would end at the watchdog.
 */
class MutatedAsksTest {
    private static final long SEED = 20_260_101;
    private static final int ASKS = 50_000;
    private static final int WATCHDOG_SECONDS = 300;
    private static final Sums SUMS = Sums.load();
    private static final List<String> NONSENSE = List.of(
            "",
            " ",
            "0",
            "-1",
            "1e9",
            "1e-9",
            "999999999999",
            "0.0000001",
            "-0.5 mm",
            "½",
            "1/0",
            "0/0",
            "NaN",
            "Infinity",
            "banana",
            "M12",
            "1/2 BSW",
            "19 tpi",
            "G 3/8",
            "#7",
            "letter F",
            "5 thou",
            "20,6 mm",
            "1 in 48",
            "5° 30'",
            "100 %",
            "3,4,5",
            "1;2;3",
            ";;;",
            ",",
            "'",
            "\"",
            "<b>",
            "\u0000",
            "٣",
            "１２",
            "12 mm 13",
            "1000 m",
            "50 kN",
            "10 bar",
            "2 hp",
            "yes",
            "no",
            "hss",
            "EN8",
            "x".repeat(500),
            "1,".repeat(400));

    /** Each sum has its own run of asks, so that a new sum does not change what the others are asked. */
    @Test
    @Timeout(value = WATCHDOG_SECONDS, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void fiftyThousandMutatedAsks_eachAnsweredOrRefusedPlainly() {
        int asks = ASKS / SUMS.list().size() + 1;
        for (Sum sum : SUMS.list()) {
            var mutation = new Mutation(sum, new Random(SEED + sum.name().hashCode()));
            for (int i = 0; i < asks; i++) {
                answeredOrRefused(sum, mutation.next(), i % 2 == 0 ? LengthUnit.INCH : LengthUnit.MILLIMETRE);
            }
        }
    }

    private static void answeredOrRefused(Sum sum, Map<String, String> ask, LengthUnit unit) {
        try {
            switch (Asking.strictly(sum, ask, unit)) {
                case Outcome.Answered answered ->
                    AnswerRange.check(FigureTree.of(answered.answer().figures()));
                case Outcome.Refused refused -> plain(refused);
            }
        } catch (RuntimeException | AssertionError fault) {
            fail(sum.name() + " " + ask + " " + unit + " should be refused, not end in " + fault, fault);
        }
    }

    private static void plain(Outcome.Refused refused) {
        assertThat(refused.field()).isNotBlank();
        assertThat(refused.say()).isNotBlank().doesNotContain("Exception").doesNotContain("null");
    }

    /** A sum's examples with one to three things done to them. */
    private record Mutation(Sum sum, Random random) {
        Map<String, String> next() {
            List<Example> examples = sum.examples();
            // Sorted, so that the same seed gives the same asks in every run.
            var ask =
                    new TreeMap<>(examples.get(random.nextInt(examples.size())).ask());
            int changes = 1 + random.nextInt(3);
            for (int i = 0; i < changes; i++) {
                change(ask);
            }
            return ask;
        }

        private void change(Map<String, String> ask) {
            List<Field<?>> fields = sum.fields();
            String field = fields.get(random.nextInt(fields.size())).name();
            switch (random.nextInt(6)) {
                case 0 -> ask.remove(field);
                case 1 -> ask.put(field, NONSENSE.get(random.nextInt(NONSENSE.size())));
                case 2 -> ask.put(field, figuresChanged(ask.getOrDefault(field, "1")));
                case 3 -> ask.put(field, charactersChanged(ask.getOrDefault(field, "M12")));
                case 4 -> ask.put(field, new ArrayList<>(ask.values()).get(random.nextInt(ask.size())));
                default -> ask.put("unit", random.nextBoolean() ? "in" : "furlong");
            }
            if (ask.isEmpty()) {
                ask.put(field, "1");
            }
        }

        private String figuresChanged(String text) {
            return text.chars()
                    .mapToObj(c -> Character.isDigit(c) && random.nextBoolean()
                            ? Integer.toString(random.nextInt(10))
                            : Character.toString(c))
                    .reduce("", String::concat);
        }

        private String charactersChanged(String text) {
            var changed = new StringBuilder(text);
            for (int i = 0; i < 2; i++) {
                int at = random.nextInt(changed.length() + 1);
                switch (random.nextInt(3)) {
                    case 0 -> changed.insert(at, (char) (32 + random.nextInt(95)));
                    case 1 -> changed.insert(at, changed.substring(0, at));
                    default -> changed.setLength(Math.max(0, changed.length() - 1));
                }
            }
            return changed.toString();
        }
    }
}
