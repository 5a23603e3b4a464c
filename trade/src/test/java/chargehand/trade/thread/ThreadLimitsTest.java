package chargehand.trade.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadLimitsTest {
    /** Tables round the basic size to a micrometre before they take the deviations off. */
    private static final double MM = 0.00061;

    private static final double INCH = 0.000051;

    /** The printed Acme limits were worked from figures already rounded to four places. */
    private static final double CHAINED_INCH = 0.00016;

    private static DiameterLimits external(String thread, String fit) {
        return ThreadLimits.find(ScrewThread.parse(thread), fit)
                .orElseThrow()
                .external()
                .orElseThrow();
    }

    private static DiameterLimits internal(String thread, String fit) {
        return ThreadLimits.find(ScrewThread.parse(thread), fit)
                .orElseThrow()
                .internal()
                .orElseThrow();
    }

    private static Stream<DynamicTest> rows(String table, Consumer<Row> check) {
        return Table.read(ThreadLimitsTest.class, "published-" + table + ".csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.text("size") + " [" + row.text("status") + "] " + row.text("source"),
                        () -> check.accept(row)));
    }

    private static void mm(Row row, String column, Optional<Length> limit) {
        assertThat(limit.orElseThrow().mm()).as(column).isCloseTo(row.number(column), within(MM));
    }

    @TestFactory
    Stream<DynamicTest> metric6g6H_asPrinted() {
        return rows("metric-tolerances", row -> {
            DiameterLimits outside = external(row.text("size"), row.text("classes"));
            DiameterLimits inside = internal(row.text("size"), row.text("classes"));
            mm(row, "ext_major_max_mm", outside.major().most());
            mm(row, "ext_major_min_mm", outside.major().least());
            mm(row, "ext_pitch_max_mm", outside.effective().most());
            mm(row, "ext_pitch_min_mm", outside.effective().least());
            mm(row, "ext_minor_flat_max_mm", outside.minor().most());
            mm(row, "int_major_min_mm", inside.major().least());
            mm(row, "int_pitch_min_mm", inside.effective().least());
            mm(row, "int_pitch_max_mm", inside.effective().most());
            mm(row, "int_minor_min_mm", inside.minor().least());
            mm(row, "int_minor_max_mm", inside.minor().most());
        });
    }

    /** Effective tolerances of other grades printed in a tap catalogue (docs.steelcam.org, Yamawa 2021 pages 645 and 656). */
    @ParameterizedTest
    @CsvSource({
        "M2, 4H, 56", "M2, 5H, 71", "M2.5, 4H, 60", "M2.5, 5H, 75", "M3, 4H, 63", "M3, 5H, 80", "M3.5, 4H, 71",
                "M4, 4H, 75",
        "M4, 5H, 95", "M4, 6H, 118", "M5, 4H, 80", "M5, 5H, 100", "M5, 6H, 125", "M6, 4H, 95", "M6, 5H, 118",
                "M6, 6H, 150",
        "M8, 4H, 100", "M8, 5H, 125", "M8, 6H, 160"
    })
    void metricOtherGrades_effectiveTolerance_asPrinted(String thread, String fit, double micrometres) {
        SizeLimits effective = internal(thread, fit).effective();

        double tolerance = effective
                .most()
                .orElseThrow()
                .minus(effective.least().orElseThrow())
                .mm();
        assertThat(tolerance * 1000).isCloseTo(micrometres, within(0.001));
    }

    /** The tables hold what the standard's formulas give, rounded to preferred numbers: never more than one step away. */
    @TestFactory
    Stream<DynamicTest> metricTables_againstFormulas_withinOneStep() {
        return Table.read(ThreadLimits.class, "metric-pitch-tolerances.csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest(row.text("over") + " x " + row.text("pitch"), () -> {
                    double mean = Math.sqrt(row.number("over") * row.number("up_to"));
                    double formula = 90 * Math.pow(row.number("pitch"), 0.4) * Math.pow(mean, 0.1);
                    row.findNumber("Td26").ifPresent(value -> oneStep(value, formula));
                    row.findNumber("TD26").ifPresent(value -> oneStep(value, 1.32 * formula));
                }));
    }

    private static void oneStep(double value, double formula) {
        assertThat(formula)
                .isBetween(PreferredNumbers.along(value, -2), PreferredNumbers.along(value, 2))
                .isCloseTo(value, within(value * 0.06));
    }

    @TestFactory
    Stream<DynamicTest> pipe_asPrinted() {
        return rows("bsp", row -> {
            ScrewThread thread = ScrewThread.parse(row.text("size"));
            DiameterLimits a = external(row.text("size"), "A");
            DiameterLimits b = external(row.text("size"), "B");
            DiameterLimits inside = internal(row.text("size"), "A");
            assertThat(off(a.effective().least(), thread.effective()))
                    .isCloseTo(row.number("ext_tol_A_pitch_mm"), within(1e-6));
            assertThat(off(b.effective().least(), thread.effective()))
                    .isCloseTo(row.number("ext_tol_B_pitch_mm"), within(1e-6));
            assertThat(off(a.major().least(), thread.major())).isCloseTo(row.number("ext_tol_major_mm"), within(1e-6));
            assertThat(off(inside.effective().most(), thread.effective()))
                    .isCloseTo(row.number("int_tol_pitch_mm"), within(1e-6));
        });
    }

    @TestFactory
    Stream<DynamicTest> trapezoidal7e_asPrinted() {
        return rows("trapezoidal-limits", row -> {
            DiameterLimits outside = external(row.text("size"), "7e");
            mm(row, "major_max_mm", outside.major().most());
            mm(row, "major_min_mm", outside.major().least());
            mm(row, "pitch_max_mm", outside.effective().most());
            mm(row, "pitch_min_mm", outside.effective().least());
            mm(row, "minor_max_mm", outside.minor().most());
            mm(row, "minor_min_mm", outside.minor().least());
        });
    }

    /** Crest tolerances and deviations against the formulas of ISO 2903 (from memory), rounded to preferred numbers. */
    @TestFactory
    Stream<DynamicTest> trapezoidalTable_againstFormulas_withinOneStep() {
        return Table.read(ThreadLimits.class, "trapezoidal-tolerances.csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest("pitch " + row.text("pitch"), () -> {
                    double pitch = row.number("pitch");
                    oneStep(row.number("Td4"), 0.63 * (180 * Math.cbrt(pitch * pitch) - 3.15 / Math.sqrt(pitch)));
                    oneStep(row.number("TD14"), 0.63 * 230 * Math.pow(pitch, 0.7));
                }));
    }

    @Test
    void trapezoidalClasses_standAsTheirGradesAndPositions() {
        assertThat(spread(external("Tr 40x7", "8e")) / spread(external("Tr 40x7", "7e")))
                .isCloseTo(1.25, within(0.03));
        assertThat(external("Tr 40x7", "8c").effective().most().orElseThrow())
                .isLessThan(external("Tr 40x7", "8e").effective().most().orElseThrow());
        assertThat(spread(internal("Tr 40x7", "7e/8H"))).isGreaterThan(spread(internal("Tr 40x7", "7H")));
        assertThat(spread(external("Tr 40x14 (P7)", "7e")) / spread(external("Tr 40x7", "7e")))
                .isCloseTo(1.12, within(1e-6));
    }

    /** Formulas and allowance of BS 93:1951 in Machinery's Handbook 31 p. 2115, worked by hand for 2 BA: pitch 0.81 mm. */
    @Test
    void britishAssociation_closeAndNormal_asByHand() {
        DiameterLimits close = external("2 BA", "close");
        DiameterLimits normal = external("2 BA", "normal");

        assertThat(close.major().least().orElseThrow().mm()).isCloseTo(4.7 - 0.1215, within(1e-6));
        assertThat(close.effective().most().orElseThrow().mm()).isCloseTo(4.215, within(1e-6));
        assertThat(close.effective().least().orElseThrow().mm()).isCloseTo(4.215 - 0.0848, within(1e-6));
        assertThat(normal.major().most().orElseThrow().mm()).isCloseTo(4.675, within(1e-6));
        assertThat(normal.major().least().orElseThrow().mm()).isCloseTo(4.675 - 0.162, within(1e-6));
        assertThat(normal.minor().least().orElseThrow().mm()).isCloseTo(3.73 - 0.025 - 0.212, within(1e-6));
        assertThat(external("12 BA", "").effective().most().orElseThrow().mm()).isCloseTo(1.130, within(1e-6));
        assertThat(internal("2 BA", "").minor().most().orElseThrow().mm()).isCloseTo(3.73 + 0.30375, within(1e-5));
    }

    private static double off(Optional<Length> limit, Length basic) {
        return limit.orElseThrow().minus(basic).mm();
    }

    /** Where a maker prints the allowance of another size for an odd pitch, the row's note says so and the formula is held. */
    @TestFactory
    Stream<DynamicTest> acme2G_asPrinted() {
        return rows("acme", row -> {
            SizeLimits effective = external(row.text("size"), "2G").effective();
            assertThat(effective.most().orElseThrow().in()).isCloseTo(row.number("ext_pitch_2G_max_in"), within(INCH));
            row.findNumber("ext_pitch_2G_max_printed_in")
                    .filter(printed -> row.text("series").equals("standard series"))
                    .ifPresent(printed -> {
                        DiameterLimits outside = external(row.text("size"), "2G");
                        assertThat(effective.most().orElseThrow().in()).isCloseTo(printed, within(CHAINED_INCH));
                        assertThat(effective.least().orElseThrow().in())
                                .isCloseTo(row.number("ext_pitch_2G_min_printed_in"), within(CHAINED_INCH));
                        assertThat(outside.minor().least().orElseThrow().in())
                                .isCloseTo(row.number("ext_minor_2G_min_printed_in"), within(CHAINED_INCH));
                    });
        });
    }

    /** From memory of the tables of ASME B1.1, classes 2A and 2B. */
    @ParameterizedTest
    @CsvSource({
        "1/4-20 UNC, 0.2489, 0.2408, 0.2164, 0.2127, 0.196, 0.207, 0.2175, 0.2224",
        "1/2-13 UNC, 0.4985, 0.4876, 0.4485, 0.4435, 0.417, 0.434, 0.4500, 0.4565",
        "#10-24 UNC, 0.1890, 0.1818, 0.1619, 0.1586, 0.145, 0.156, 0.1629, 0.1672",
        "#10-32 UNF, 0.1891, 0.1831, 0.1688, 0.1658, 0.156, 0.164, 0.1697, 0.1736"
    })
    void unified2A2B_asRemembered(
            String thread,
            double majorMost,
            double majorLeast,
            double effectiveMost,
            double effectiveLeast,
            double minorLeast,
            double minorMost,
            double insideLeast,
            double insideMost) {
        DiameterLimits outside = external(thread, "2A");
        DiameterLimits inside = internal(thread, "2B");

        near(outside.major().most(), majorMost);
        near(outside.major().least(), majorLeast);
        near(outside.effective().most(), effectiveMost);
        near(outside.effective().least(), effectiveLeast);
        near(inside.minor().least(), minorLeast);
        near(inside.minor().most(), minorMost);
        near(inside.effective().least(), insideLeast);
        near(inside.effective().most(), insideMost);
    }

    private static void near(Optional<Length> limit, double inches) {
        assertThat(limit.orElseThrow().in()).isCloseTo(inches, within(1e-7));
    }

    /** Proportions of the classes as printed in a tap maker's drawing of BS 84 (Sutton catalogue p. 456): 66⅔, 100, 150. */
    @Test
    void whitworthClasses_standInPrintedProportion() {
        double close = spread(external("1 BSW", "close"));
        double medium = spread(external("1 BSW", "medium"));
        double free = spread(external("1 BSW", "free"));

        assertThat(close / medium).isCloseTo(2.0 / 3, within(1e-5));
        assertThat(free / medium).isCloseTo(1.5, within(1e-5));
        assertThat(spread(internal("1 BSW", "normal")) / medium).isCloseTo(1.5, within(1e-5));
    }

    private static double spread(DiameterLimits limits) {
        SizeLimits effective = limits.effective();
        return effective
                .most()
                .orElseThrow()
                .minus(effective.least().orElseThrow())
                .in();
    }

    /** The same source: an allowance to 3/4 in only. */
    @Test
    void whitworthAllowance_onlyToThreeQuarters() {
        ScrewThread small = ScrewThread.parse("3/4 BSW");
        ScrewThread large = ScrewThread.parse("7/8 BSW");

        assertThat(external("3/4 BSW", "medium").effective().most().orElseThrow())
                .isLessThan(small.effective());
        assertThat(external("3/4 BSW", "close").effective().most()).contains(small.effective());
        assertThat(external("7/8 BSW", "medium").effective().most()).contains(large.effective());
    }

    @TestFactory
    Stream<DynamicTest> everyListedThread_limitsLieAboutTheBasicForm() {
        return Stream.of(ThreadSeries.values())
                .map(series -> DynamicTest.dynamicTest(
                        series.title(), () -> Threads.list(series).forEach(ThreadLimitsTest::aboutBasic)));
    }

    private static void aboutBasic(ScrewThread thread) {
        Optional<ThreadLimits> limits = ThreadLimits.find(thread);
        limits.flatMap(ThreadLimits::external).ifPresent(outside -> {
            assertThat(outside.effective().most().orElseThrow())
                    .as(thread.toString())
                    .isLessThanOrEqualTo(thread.effective());
            assertThat(outside.effective().least().orElseThrow())
                    .isLessThan(outside.effective().most().orElseThrow());
            assertThat(outside.major().least().orElseThrow())
                    .isGreaterThan(outside.effective().most().orElseThrow());
        });
        limits.flatMap(ThreadLimits::internal).ifPresent(inside -> {
            assertThat(inside.effective().least().orElseThrow().in())
                    .as(thread.toString())
                    .isCloseTo(thread.effective().in(), within(INCH));
            assertThat(inside.minor().most().orElseThrow()).isLessThan(thread.major());
            assertThat(inside.minor().most().orElseThrow())
                    .isGreaterThan(inside.minor().least().orElseThrow());
        });
    }

    @ParameterizedTest
    @CsvSource({
        "M12, 2A",
        "M12, 7g",
        "M12, 6g/6g/x",
        "1/2-13 UNC, 6g",
        "1/2-13 UNC, 2A/3B",
        "1/2 BSW, 2A",
        "G 3/8, C",
        "2 BA, free",
        "12 BA, close",
        "Tr 30x6, 6g",
        "Tr 30x6, 7c",
        "1/2-10 Acme, 5G",
        "'1-8 Acme, 2 start', 2G"
    })
    void unknownClass_isRefused(String thread, String fit) {
        assertThatThrownBy(() -> ThreadLimits.find(ScrewThread.parse(thread), fit))
                .isInstanceOf(Unreadable.class);
    }
}
