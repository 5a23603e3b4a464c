package chargehand.trade.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Basic dimensions against printed tables. Each test is named by its thread, the status of the row (seen: read in print;
 * partial: some columns read; computed and memory: arithmetic only) and the row's source.
 */
class PublishedThreadsTest {
    /** Half a unit of the third decimal of a millimetre, the last that metric tables print. */
    private static final double MM = 0.00051;

    /** Half a unit of the fourth decimal of an inch, the last that inch tables print. */
    private static final double INCH = 0.000051;

    /** Columns that handbooks work out from figures already rounded: one unit of the last decimal. */
    private static final double CHAINED_INCH = 0.0001;

    /** Handbooks round the Whitworth depth to four places and then take it off once or twice. */
    private static final double WHITWORTH_HABIT_INCH = 0.00016;

    /** The unrounded formula columns carry five places. */
    private static final double FORMULA_INCH = 0.0000051;

    private static Stream<Row> rows(String name) {
        return Table.read(PublishedThreadsTest.class, "published-" + name + ".csv").rows().stream();
    }

    private static Stream<DynamicTest> each(String table, Function<Row, String> designation, Check check) {
        return rows(table).map(row -> {
            String written = designation.apply(row);
            String name = written + " [" + row.text("status") + "] " + row.text("source");
            return DynamicTest.dynamicTest(name, () -> check.check(row, ScrewThread.parse(written)));
        });
    }

    private interface Check {
        void check(Row row, ScrewThread thread);
    }

    private static void mm(Row row, String column, Length actual) {
        row.findNumber(column)
                .ifPresent(printed -> assertThat(actual.mm()).as(column).isCloseTo(printed, within(MM)));
    }

    private static void in(Row row, String column, Length actual, double tolerance) {
        row.findNumber(column)
                .ifPresent(printed -> assertThat(actual.in()).as(column).isCloseTo(printed, within(tolerance)));
    }

    @TestFactory
    Stream<DynamicTest> metric_asPrinted() {
        return each("metric-coarse-fine", row -> row.text("size"), (row, thread) -> {
            mm(row, "major_mm", thread.major());
            mm(row, "pitch_mm", thread.pitch().length());
            mm(row, "pitch_dia_mm", thread.effective());
            mm(row, "minor_internal_mm", thread.minorInternal());
            mm(row, "minor_external_rounded_mm", thread.minor());
        });
    }

    @TestFactory
    Stream<DynamicTest> unified_asPrinted() {
        return each("unc-unf", row -> row.text("size"), (row, thread) -> {
            in(row, "major_in", thread.major(), INCH);
            in(row, "pitch_dia_in", thread.effective(), INCH);
            in(row, "minor_internal_in", thread.minorInternal(), INCH);
            in(row, "minor_external_unr_in", thread.minor(), CHAINED_INCH);
            in(row, "formula_pitch_dia_in", thread.effective(), FORMULA_INCH);
            in(row, "formula_minor_internal_in", thread.minorInternal(), FORMULA_INCH);
        });
    }

    @TestFactory
    Stream<DynamicTest> whitworthCoarse_asPrinted() {
        return each("bsw", row -> row.text("size") + " BSW", PublishedThreadsTest::whitworth);
    }

    @TestFactory
    Stream<DynamicTest> whitworthFine_asPrinted() {
        return each("bsf", row -> row.text("size") + " BSF", PublishedThreadsTest::whitworth);
    }

    private static void whitworth(Row row, ScrewThread thread) {
        assertThat(thread.pitch().tpi().doubleValue()).isEqualTo(row.number("tpi"));
        in(row, "depth_in", thread.depth(), INCH);
        in(row, "major_in", thread.major(), INCH);
        in(row, "effective_in", thread.effective(), WHITWORTH_HABIT_INCH);
        in(row, "minor_in", thread.minor(), WHITWORTH_HABIT_INCH);
        in(row, "formula_effective_in", thread.effective(), FORMULA_INCH);
        in(row, "formula_minor_in", thread.minor(), FORMULA_INCH);
    }

    @TestFactory
    Stream<DynamicTest> pipe_asPrinted() {
        return each("bsp", row -> row.text("size"), (row, thread) -> {
            assertThat(thread.pitch().tpi().doubleValue()).isEqualTo(row.number("tpi"));
            mm(row, "pitch_mm", thread.pitch().length());
            mm(row, "depth_mm", thread.depth());
            mm(row, "major_mm", thread.major());
            mm(row, "pitch_dia_mm", thread.effective());
            mm(row, "minor_mm", thread.minor());
        });
    }

    @TestFactory
    Stream<DynamicTest> taperPipe_asPrinted() {
        return each("bspt", row -> row.text("size"), (row, thread) -> {
            PipeGauge gauge = thread.gauge().orElseThrow();
            assertThat(thread.isTaper()).isTrue();
            assertThat(thread.pitch().tpi().doubleValue()).isEqualTo(row.number("tpi"));
            mm(row, "gauge_dia_mm", thread.major());
            mm(row, "pitch_dia_at_gauge_mm", thread.effective());
            mm(row, "minor_at_gauge_mm", thread.minor());
            mm(row, "gauge_length_mm", gauge.length());
            mm(row, "useful_thread_min_mm", gauge.usefulLength());
            mm(row, "small_end_major_mm", gauge.smallEnd(thread.major()));
            assertThat(row.text("gauge_length_tol_mm"))
                    .isEqualTo("+/-" + gauge.tolerance().mm());
        });
    }

    @TestFactory
    Stream<DynamicTest> britishAssociation_asPrinted() {
        return each("ba", row -> row.text("size"), (row, thread) -> {
            mm(row, "pitch_mm", thread.pitch().length());
            mm(row, "depth_mm", thread.depth());
            mm(row, "major_mm", thread.major());
            mm(row, "effective_mm", thread.effective());
            mm(row, "minor_mm", thread.minor());
            assertThat(thread.profile().rootRadius().orElseThrow().mm())
                    .isCloseTo(row.number("root_radius_mm"), within(0.000051));
            in(row, "major_in", thread.major(), INCH);
            in(row, "minor_in", thread.minor(), INCH);
            assertThat(thread.form().includedAngle().degrees()).isEqualTo(row.number("angle_deg"));
        });
    }

    @TestFactory
    Stream<DynamicTest> trapezoidal_asPrinted() {
        return each("trapezoidal", row -> row.text("size"), (row, thread) -> {
            mm(row, "major_mm", thread.major());
            mm(row, "clearance_ac_mm", thread.profile().clearance());
            mm(row, "pitch_dia_mm", thread.effective());
            mm(row, "ext_minor_d3_mm", thread.minor());
            mm(row, "ext_minor_d3_mm", thread.core());
            mm(row, "int_minor_D1_mm", thread.minorInternal());
            mm(row, "int_major_D4_mm", thread.majorInternal());
        });
    }

    @TestFactory
    Stream<DynamicTest> acme_asPrinted() {
        return each("acme", row -> row.text("size"), (row, thread) -> {
            ThreadProfile profile = thread.profile();
            in(row, "major_in", thread.major(), INCH);
            in(row, "total_height_in", profile.depth(), INCH);
            in(row, "crest_flat_basic_in", profile.crestFlat().orElseThrow(), INCH);
            in(row, "root_flat_in", profile.rootFlat().orElseThrow(), CHAINED_INCH);
            in(row, "basic_pitch_dia_in", thread.effective(), INCH);
            in(row, "basic_minor_in", thread.minor(), INCH);
            in(row, "ext_minor_max_in", thread.core(), INCH);
            in(row, "tap_minor_internal_min_in", thread.minorInternal(), INCH);
        });
    }

    @TestFactory
    Stream<DynamicTest> square_asPrinted() {
        return each("square-thread", row -> row.text("size") + "-" + row.text("tpi") + " square", (row, thread) -> {
            in(row, "depth_in", thread.depth(), INCH);
            in(row, "minor_in", thread.minor(), INCH);
            in(row, "mean_dia_in", thread.effective(), INCH);
        });
    }

    @TestFactory
    Stream<DynamicTest> oldForms_asPrinted() {
        return each("brass-cycle-other-old", PublishedThreadsTest::oldDesignation, (row, thread) -> {
            assertThat(thread.form().includedAngle().degrees()).isEqualTo(row.number("angle_deg"));
            in(row, "pitch_in", thread.pitch().length(), INCH);
            in(row, "depth_in", thread.depth(), INCH);
            in(row, "effective_in", thread.effective(), INCH);
            in(row, "minor_in", thread.minor(), INCH);
        });
    }

    private static String oldDesignation(Row row) {
        String size = row.text("size");
        String tpi = row.text("tpi");
        return switch (row.text("series")) {
            case "BSB" -> size + " BSB";
            case "BSC/CEI" -> size + "-" + tpi + " CEI";
            case "ME" -> size + "-" + tpi + " ME";
            case "BS conduit" -> size + " Conduit";
            default -> size + "-" + tpi + " Whit";
        };
    }
}
