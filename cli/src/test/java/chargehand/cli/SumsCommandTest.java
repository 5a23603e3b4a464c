package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;

final class SumsCommandTest {
    private static final String LINE = "{\"id\":%s,\"sum\":\"size\",\"ask\":{\"size\":\"%s\"}}\n";
    private static final int MUTATED_LINES = 10_000;
    private static final String ODD = "0123456789./-,'\" ×°½{}[]:eEinmtp\u0000\uD800";

    @Test
    void sums_manyLines_areAnsweredInOrderWithTheirIds() {
        var in = new StringBuilder();
        for (int id = 1; id <= 200; id++) {
            in.append(LINE.formatted(id, id + " mm"));
        }
        List<String> lines = Said.fed(in.toString(), "sums").lines();
        assertThat(lines).hasSize(200);
        for (int id = 1; id <= 200; id++) {
            assertThat(lines.get(id - 1))
                    .startsWith("{\"id\":" + id + ",\"sum\":\"size\",\"answer\":{")
                    .contains("\"mm\":" + id + ".0,");
        }
    }

    @Test
    void sums_idOfAnyKind_isEchoed() {
        for (String id : List.of("\"job 7\"", "7.50", "true", "[1,2]", "{\"a\":1}", "12345678901234567890")) {
            assertThat(Said.fed(LINE.formatted(id, "1"), "sums").out()).startsWith("{\"id\":" + id + ",");
        }
    }

    @Test
    void sums_badLine_isAnsweredWithItsNumberAndTheRestGoesOn() {
        Said said = Said.fed(LINE.formatted(1, "1") + "\n{what\n" + LINE.formatted(2, "2"), "sums");
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.lines()).hasSize(3);
        Map<String, Object> refused = JsonLines.read(said.lines().get(1));
        assertThat(refused).containsEntry("line", 3);
        assertThat(refused.get("error"))
                .hasToString("{field=line, say=this cannot be read as JSON from character 2 on}");
        assertThat(said.lines().get(2)).startsWith("{\"id\":2,");
    }

    @Test
    void sums_unit_isThatOfBareNumbers() {
        assertThat(Said.fed(LINE.formatted(1, "2"), "sums", "--unit", "in").out())
                .contains("\"mm\":50.8,\"in\":2.0");
        assertThat(Said.fed(LINE.formatted(1, "2"), "sums").out()).contains("\"mm\":2.0,");
    }

    @Test
    void sums_nothingFed_answersNothing() {
        assertThat(Said.fed("", "sums")).isEqualTo(new Said(Ended.ANSWERED, "", ""));
    }

    @Test
    void sums_lineByLine_eachAnswerComesBeforeTheNextLineIsWaitedFor() {
        var out = new ByteArrayOutputStream();
        var heard = new ArrayList<Integer>();
        var slow = new InputStream() {
            private int line;

            @Override
            public int read() {
                throw new UnsupportedOperationException("read in pieces");
            }

            @Override
            public int read(byte[] into, int from, int most) {
                heard.add(out.toString(StandardCharsets.UTF_8).split("\n", -1).length - 1);
                if (line == 3) {
                    return -1;
                }
                line++;
                byte[] written = LINE.formatted(line, line).getBytes(StandardCharsets.UTF_8);
                System.arraycopy(written, 0, into, from, written.length);
                return written.length;
            }
        };
        var terminal = new Terminal(
                slow,
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(out, false, StandardCharsets.UTF_8));
        Commands.of(terminal, "").run("sums");
        assertThat(heard).startsWith(0, 1, 2, 3);
    }

    @Test
    void sumsList_namesEverySum() {
        Said said = Said.by("sums", "--list");
        List<Sum> sums = Sums.load().list();
        assertThat(said.lines()).hasSameSizeAs(sums);
        for (int each = 0; each < sums.size(); each++) {
            assertThat(said.lines().get(each))
                    .startsWith(sums.get(each).name() + " ")
                    .endsWith(sums.get(each).purpose());
        }
    }

    @Test
    void sums_mutatedLines_areEachAnsweredOrRefusedInWords() {
        var random = new Random(20_260_101);
        List<String> sound = soundLines();
        var in = new StringBuilder();
        for (int line = 0; line < MUTATED_LINES; line++) {
            in.append(mutated(sound.get(random.nextInt(sound.size())), random)).append('\n');
        }
        Said said = Said.fed(in.toString(), "sums");
        assertThat(said.lines()).hasSize(MUTATED_LINES);
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.lines()).allSatisfy(SumsCommandTest::isAnsweredOrRefusedInWords);
        assertThat(said.lines())
                .anyMatch(line -> line.contains("\"answer\""))
                .anyMatch(line -> line.contains("\"error\""));
    }

    private static void isAnsweredOrRefusedInWords(String line) {
        Map<String, Object> answer = JsonLines.read(line);
        if (answer.containsKey("answer")) {
            assertThat(answer).doesNotContainKey("error");
            assertThat(line).doesNotContain("NaN", "Infinity");
        } else {
            assertThat(answer.get("error"))
                    .asInstanceOf(InstanceOfAssertFactories.map(String.class, String.class))
                    .containsKey("field")
                    .hasEntrySatisfying(
                            "say",
                            say -> assertThat(say)
                                    .isNotBlank()
                                    .doesNotContain("Exception", "java.", "chargehand.", "a fault of its own"));
        }
    }

    private static List<String> soundLines() {
        var lines = new ArrayList<String>();
        for (Sum sum : Sums.load().list()) {
            sum.examples().forEach(example -> {
                var line = new LinkedHashMap<String, Object>();
                line.put("id", lines.size());
                line.put("sum", sum.name());
                line.put("ask", example.ask());
                lines.add(JsonLines.write(line));
            });
        }
        return lines;
    }

    /** One to three strokes of a careless or a hostile hand; line breaks are left out, since they would make two lines. */
    private static String mutated(String line, Random random) {
        var text = new StringBuilder(line);
        for (int stroke = random.nextInt(3); stroke >= 0; stroke--) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(5)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, ODD.charAt(random.nextInt(ODD.length())));
                case 2 -> text.insert(at, text.substring(at, Math.min(text.length(), at + 8)));
                case 3 -> text.setCharAt(at, (char) ('!' + random.nextInt(94)));
                case 4 -> text.insert(at, "9".repeat(1 + random.nextInt(400)));
                default -> throw new AssertionError("five strokes");
            }
            if (text.isEmpty()) {
                text.append('{');
            }
        }
        return text.toString();
    }
}
