package chargehand.trade.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Pitch;
import chargehand.trade.PublishedRow;
import chargehand.trade.Tree;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThreadSumTest {
    private static final double TWO_ROUNDINGS_IN = 2.5 / Length.NM_PER_INCH;

    private static Outcome ask(Map<String, String> ask) {
        return Asking.ask(new ThreadSum(), ask, LengthUnit.MILLIMETRE);
    }

    private static Map<String, Object> answer(Map<String, String> ask) {
        return FigureTree.of(((Outcome.Answered) ask(ask)).answer().figures());
    }

    private static Stream<DynamicTest> rows(String kind, Check check) {
        return PublishedRow.of("threads.json", kind).stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> check.check(row)));
    }

    private interface Check {
        void check(PublishedRow row);
    }

    @TestFactory
    Stream<DynamicTest> pipe_asPrinted() {
        return rows("bsp", row -> {
            Map<String, Object> answer = answer(Map.of("thread", row.text("thread")));
            assertThat(Tree.number(answer, "major", "in")).isCloseTo(row.want("major"), row.within("major"));
            assertThat(Tree.number(answer, "effective", "in"))
                    .isCloseTo(row.want("pitch_dia"), row.within("pitch_dia"));
            assertThat(Tree.number(answer, "minor", "in")).isCloseTo(row.want("minor"), row.within("minor"));
        });
    }

    @TestFactory
    Stream<DynamicTest> britishAssociation_byRule() {
        return rows("BA", row -> {
            Map<String, Object> answer = answer(Map.of("thread", row.text("number") + " BA"));
            assertThat(Tree.number(answer, "major", "mm")).isCloseTo(row.want("major"), within(1e-9));
            assertThat(Tree.number(answer, "pitch", "mm")).isCloseTo(row.want("pitch"), within(1e-9));
        });
    }

    @TestFactory
    Stream<DynamicTest> depth_byForm() {
        return rows("thread_depth", row -> {
            ThreadForm form = switch (row.text("form")) {
                case "UN external" -> ThreadForm.UNIFIED;
                case "BA" -> ThreadForm.BRITISH_ASSOCIATION;
                default -> ThreadForm.WHITWORTH;
            };
            Pitch pitch = Pitch.ofMm(row.text("pitch"));
            assertThat(form.at(pitch).depth().mm()).isCloseTo(row.want("depth"), row.within("depth"));
        });
    }

    /** The hexagons printed with the threads: BS 1083 and Whitworth's own for inch bolts, ISO 4014 and BS 3692 for metric. */
    @TestFactory
    Stream<DynamicTest> spanner_asPrinted() {
        return Stream.of(
                        spanners("bsw", " BSW", "af_bs1083_max_in", "spanner"),
                        spanners("bsf", " BSF", "af_bs1083_max_in", "spanner"),
                        spanners("ba", "", "spanner_af_in", "spanner"),
                        spanners("bsw", " BSW", "af_old_whitworth_in", "spannerOlder"))
                .flatMap(tests -> tests);
    }

    private static Stream<DynamicTest> spanners(String table, String series, String column, String key) {
        return Table.read(ThreadSumTest.class, "published-" + table + ".csv").rows().stream()
                .filter(row -> !row.text(column).isEmpty())
                .map(row -> DynamicTest.dynamicTest(
                        row.text("size") + series + " " + key + " [" + row.text("status") + "] " + row.text("source"),
                        () -> spanner(row, row.text("size") + series, column, key)));
    }

    private static void spanner(Row row, String thread, String column, String key) {
        Map<String, Object> answer = answer(Map.of("thread", thread));
        String found = answer.containsKey(key) ? key : "spanner";
        assertThat(Tree.number(answer, found, "in")).isCloseTo(row.number(column), within(0.004));
    }

    @TestFactory
    Stream<DynamicTest> metricSpanner_asPrinted() {
        return Table.read(ThreadSumTest.class, "published-metric-coarse-fine.csv").rows().stream()
                .filter(row -> !row.text("hex_af_iso4014_mm").isEmpty())
                .map(row -> DynamicTest.dynamicTest(row.text("size") + " " + row.text("note"), () -> {
                    Spanner spanner =
                            Spanner.find(ScrewThread.parse(row.text("size"))).orElseThrow();
                    assertThat(spanner.flats()).isEqualTo(Length.mm(row.number("hex_af_iso4014_mm")));
                    row.findNumber("hex_af_bs3692_mm")
                            .map(Length::mm)
                            .ifPresent(earlier -> assertThat(spanner.older().orElse(spanner.flats()))
                                    .isEqualTo(earlier));
                }));
    }

    @Test
    void limits_haveTheShapeOfTheContract() {
        Map<String, Object> answer = answer(Map.of("thread", "M6", "fit", "6g/6H"));

        assertThat(Tree.number(answer, "limits", "external", "effective", "min", "mm"))
                .isCloseTo(5.212, within(0.0006));
        assertThat(Tree.number(answer, "limits", "internal", "minor", "max", "mm"))
                .isCloseTo(5.153, within(0.0006));
        assertThat(Tree.number(answer, "limits", "external", "minor", "max", "mm"))
                .isCloseTo(4.891, within(0.0006));
    }

    @ParameterizedTest
    @CsvSource({
        "M12-6g, 6g/6H",
        "M12x1.25-4h/5H, 4h/5H",
        "1/2-13 UNC-3A, 3A/3B",
        "G 3/8 B, B",
        "1/2 BSW free, free/normal",
        "M12, 6g/6H"
    })
    void designationWithClass_bringsItsFit(String thread, String fit) {
        assertThat(answer(Map.of("thread", thread))).containsEntry("fit", fit);
    }

    @Test
    void multiStart_leadIsStartsTimesPitch() {
        Map<String, Object> answer = answer(Map.of("thread", "Tr 40x14 (P7) LH"));

        assertThat(Tree.number(answer, "lead", "mm")).isEqualTo(14);
        assertThat(Tree.number(answer, "pitch", "mm")).isEqualTo(7);
        assertThat(Tree.number(answer, "starts")).isEqualTo(2);
        assertThat(answer).containsEntry("leftHand", true);
    }

    @Test
    void taperPipe_hasItsTaperAndGauge() {
        Map<String, Object> answer = answer(Map.of("thread", "3/8 BSPT"));

        assertThat(Tree.number(answer, "taper")).isEqualTo(16);
        assertThat(Tree.number(answer, "gaugeLength", "mm")).isEqualTo(6.4);
        assertThat(Tree.number(answer, "smallEnd", "mm")).isCloseTo(16.662 - 0.4, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "M12, 2A, fit",
        "1/2 BSW, 6g, fit",
        "Tr 30x6, 6g, fit",
        "M13, '', thread",
        "rope, '', thread",
        "M12-9z, '', thread",
        "M12-6g-6g-6g, '', thread"
    })
    void nonsense_isRefusedByItsField(String thread, String fit, String field) {
        assertThat(ask(Map.of("thread", thread, "fit", fit)))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo(field));
    }

    @Test
    void working_printsTheRuleItComputesWith() {
        var answered = (Outcome.Answered) ask(Map.of("thread", "1/2 BSW"));

        assertThat(answered.working())
                .anySatisfy(step -> assertThat(step.formula()).isEqualTo("h = 2/3 H"))
                .anySatisfy(step -> {
                    assertThat(step.formula()).isEqualTo("d − 2 h");
                    assertThat(step.numbers()).isEqualTo("12.7 − 2 × 1.355");
                    assertThat(step.result()).isEqualTo("9.989 mm (.3933 in)");
                });
    }

    @ParameterizedTest
    @EnumSource(ThreadSeries.class)
    void everyListedThread_diametersStandInOrder(ThreadSeries series) {
        for (ScrewThread thread : Threads.list(series)) {
            assertThat(ScrewThread.parse(thread.designation())).isEqualTo(thread);
            assertThat(thread.major()).isGreaterThan(thread.effective());
            assertThat(thread.effective()).isGreaterThan(thread.minor());
            assertThat(thread.core()).isLessThanOrEqualTo(thread.minor()).isGreaterThan(Length.ZERO);
            assertThat(thread.minorInternal()).isGreaterThanOrEqualTo(thread.minor());
            assertThat(thread.majorInternal()).isGreaterThanOrEqualTo(thread.major());
        }
    }

    /** Rounded forms are the same above and below the effective line: effective is major less one depth. */
    @ParameterizedTest
    @EnumSource(
            value = ThreadSeries.class,
            names = {"BSW", "BSF", "BSP", "BA", "CYCLE", "BRASS"})
    void symmetricForms_effectiveIsMajorLessDepth(ThreadSeries series) {
        for (ScrewThread thread : Threads.list(series)) {
            assertThat(thread.effective()).isEqualTo(thread.major().minus(thread.depth()));
            assertThat(thread.minor()).isEqualTo(thread.core());
        }
    }

    /** Every dimension of a form, save one rounded by its standard or with a clearance of its own, grows with the pitch. */
    @ParameterizedTest
    @EnumSource(
            value = ThreadForm.class,
            names = {"ISO_METRIC", "UNIFIED", "WHITWORTH", "CYCLE", "SQUARE"})
    void form_atTwiceThePitch_isTwiceAsLarge(ThreadForm form) {
        ThreadProfile one = form.at(Pitch.ofTpi(20));
        ThreadProfile two = form.at(Pitch.ofTpi(10));

        for (List<Length> pair : List.of(
                List.of(one.depth(), two.depth()),
                List.of(one.effectiveDrop(), two.effectiveDrop()),
                List.of(one.minorDrop(), two.minorDrop()),
                List.of(one.fullEngagement(), two.fullEngagement()))) {
            assertThat(pair.get(1).in()).isCloseTo(2 * pair.get(0).in(), within(TWO_ROUNDINGS_IN));
        }
    }

    @ParameterizedTest
    @EnumSource(ThreadForm.class)
    void form_depth_growsWithThePitch(ThreadForm form) {
        Length before = Length.ZERO;
        for (int tpi = 40; tpi >= 2; tpi--) {
            Length depth = form.at(Pitch.ofTpi(tpi)).depth();
            assertThat(depth).isGreaterThan(before);
            before = depth;
        }
    }

    @Test
    void pitchAndThreadsToTheInch_areInverse() {
        for (int eighths = 8; eighths <= 800; eighths++) {
            BigFraction tpi = BigFraction.of(eighths, 8);
            assertThat(Pitch.ofTpi(tpi).tpi()).isEqualTo(tpi);
        }
    }
}
