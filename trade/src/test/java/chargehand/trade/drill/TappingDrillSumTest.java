package chargehand.trade.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Outcome;
import chargehand.trade.table.Table;
import chargehand.trade.thread.ScrewThread;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Published tapping drills are asked of the rules, not typed in: each row is named with its status and source. */
class TappingDrillSumTest {
    private static final Pattern MILLIMETRES = Pattern.compile("[0-9.]+");

    private static Outcome ask(Map<String, String> ask) {
        return Asking.ask(new TappingDrillSum(), ask, LengthUnit.MILLIMETRE);
    }

    private static Answer answer(Map<String, String> ask) {
        return ((Outcome.Answered) ask(ask)).answer();
    }

    private static Drill drill(Map<String, String> ask) {
        return Drill.parse(((Figure.Words) answer(ask).get("drill")).text());
    }

    private static Stream<DynamicTest> rows(String table, String column, String series, Map<String, String> held) {
        return Table.read(ScrewThread.class, "published-" + table + ".csv").rows().stream()
                .filter(row -> !row.text(column).isEmpty())
                .map(row -> {
                    String thread = row.text("size") + series;
                    String expected = held.getOrDefault(thread, row.text(column));
                    String name = thread + " printed " + row.text(column)
                            + (held.containsKey(thread) ? ", held " + expected : "") + " [" + row.text("status") + "] "
                            + row.text("seen_at");
                    return DynamicTest.dynamicTest(
                            name,
                            () -> assertThat(drill(Map.of("thread", thread)).diameter())
                                    .isEqualTo(size(expected)));
                });
    }

    private static Length size(String printed) {
        if (printed.startsWith("No.")
                || printed.startsWith("letter")
                || printed.contains(" in")
                || printed.length() == 1) {
            return Drill.parse(printed).diameter();
        }
        Matcher millimetres = MILLIMETRES.matcher(printed);
        assertThat(millimetres.find()).isTrue();
        return Drill.parse(millimetres.group() + " mm").diameter();
    }

    @TestFactory
    Stream<DynamicTest> metric_asPrinted() {
        return rows("metric-coarse-fine", "tapping_drill_mm", "", Map.of());
    }

    /** 1 3/4-5 is printed 1 35/64, one 64th under the nearest to three quarters of the thread. */
    @TestFactory
    Stream<DynamicTest> unified_asPrinted() {
        return Table.read(ScrewThread.class, "published-unc-unf.csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.text("size") + " printed " + row.text("tapping_drill_inch") + " [" + row.text("status")
                                + "] " + row.text("seen_at"),
                        () -> assertThat(drill(Map.of("thread", row.text("size")))
                                        .diameter()
                                        .in())
                                .isCloseTo(
                                        Drill.parse(row.text("tapping_drill_inch"))
                                                .diameter()
                                                .in(),
                                        within(row.text("size").equals("1 3/4-5 UNC") ? 1 / 64.0 + 1e-9 : 1e-9))));
    }

    /** BS 1157's drills follow from the limits of the nut; the formula for those limits is so checked against print. */
    @TestFactory
    Stream<DynamicTest> whitworthCoarse_asPrinted() {
        return rows("bsw", "tapping_drill_mm", " BSW", Map.of());
    }

    /**
     * Held apart: 9/32 is printed 6.20 by a list of its own that goes over the nut's limit; 5/16 and 7/8 are printed as the
     * nearest fractions to the metric drills of BS 1157.
     */
    @TestFactory
    Stream<DynamicTest> whitworthFine_asPrinted() {
        return rows(
                "bsf",
                "tapping_drill_mm",
                " BSF",
                Map.of("9/32 BSF", "6.1 mm", "5/16 BSF", "6.8 mm", "7/8 BSF", "19.75 mm"));
    }

    /** Held apart: 45.5, 78.5 and 85.5 mm are no listed drills, and 45.5 goes over the limit of 45.485 mm. */
    @TestFactory
    Stream<DynamicTest> pipe_asPrinted() {
        return rows("bsp", "tapping_drill_mm", "", Map.of("G 1 1/2", "45 mm", "G 2 3/4", "79 mm", "G 3", "85 mm"));
    }

    /** Held apart: 16 BA is printed 0.60, eighty-three per cent of the thread where the others have about seventy-five. */
    @TestFactory
    Stream<DynamicTest> britishAssociation_asPrinted() {
        return rows("ba", "tapping_drill_mm", "", Map.of("16 BA", "0.62 mm"));
    }

    @TestFactory
    Stream<DynamicTest> workedExamples_drillAndMinor() {
        return PublishedRow.of("threads.json", "tapping").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    ScrewThread thread = ScrewThread.parse(row.text("thread"));
                    assertThat(drill(Map.of("thread", row.text("thread")))
                                    .diameter()
                                    .mm())
                            .isEqualTo(row.want("tap_drill"));
                    assertThat(thread.minorInternal().mm())
                            .isCloseTo(row.want("minor_basic"), row.within("minor_basic"));
                }));
    }

    @TestFactory
    Stream<DynamicTest> workedExamples_partOfThread() {
        return PublishedRow.of("threads.json", "thread_percent").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    String thread = "M" + row.text("D") + "x" + row.text("p");
                    Answer answer = answer(Map.of("thread", thread, "drills", row.text("drill")));
                    assertThat(number(answer, "engagement"))
                            .isCloseTo(row.want("percent_of_1299p"), row.within("percent_of_1299p"));
                }));
    }

    private static double number(Answer answer, String name) {
        return ((Figure.Percent) answer.get(name)).number();
    }

    @Test
    void owned_nearestInLimits_isChosenBeforeNearer() {
        // 1/2 BSW: the nut's minor diameter may be 9.99 to 10.59 mm.
        Answer answer = answer(Map.of("thread", "1/2 BSW", "drills", "10, 10.6, 10.7"));

        assertThat(answer.get("drill")).isEqualTo(Figure.of("10 mm"));
        assertThat(answer.get("minorFit")).isEqualTo(Figure.of(true));
    }

    @Test
    void engagementAsked_comesBeforeTheLimits() {
        Answer answer = answer(Map.of("thread", "M10", "engagement", "60"));

        assertThat(answer.get("drill")).isEqualTo(Figure.of("8.8 mm"));
        assertThat(answer.get("minorFit")).isEqualTo(Figure.of(false));
    }

    @Test
    void toughMaterial_leavesLessThread_withinTheLimits() {
        Answer plain = answer(Map.of("thread", "M10", "material", "EN3B"));
        Answer tough = answer(Map.of("thread", "M10", "material", "316"));

        assertThat(number(tough, "engagement")).isLessThan(number(plain, "engagement"));
        assertThat(tough.get("minorFit")).isEqualTo(Figure.of(true));
    }

    @Test
    void engagement_risesAsTheDrillShrinks() {
        double before = 0;
        for (String size : new String[] {"9", "8.9", "8.8", "8.7", "8.6", "8.5", "8.4"}) {
            double engagement = number(answer(Map.of("thread", "M10", "drills", size)), "engagement");
            assertThat(engagement).isGreaterThan(before);
            before = engagement;
        }
    }

    @Test
    void powerScrew_isDrilledToItsMinorDiameter() {
        assertThat(drill(Map.of("thread", "Tr 30x6"))).isEqualTo(Drill.parse("24 mm"));
    }

    @Test
    void drillsOwned_noneOfUse_isRefusedWithWhatWouldDo() {
        var refused = (Outcome.Refused) ask(Map.of("thread", "M12", "drills", "3, 20"));

        assertThat(refused.field()).isEqualTo("drills");
        assertThat(refused.say()).contains("none of these would do for M12").contains("10.25 mm");
    }

    @Test
    void engagementAsked_moreThanTheForm_isRefused() {
        var refused = (Outcome.Refused) ask(Map.of("thread", "M12", "engagement", "95"));

        assertThat(refused.field()).isEqualTo("engagement");
        assertThat(refused.say()).contains("83 %");
    }
}
