package chargehand.trade.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrillTest {
    private static final double PRINTED_INCH = 0.000051;
    private static final double PRINTED_MM = 0.00051;

    @TestFactory
    Stream<DynamicTest> drills_asPrinted() {
        return Table.read(DrillTest.class, "published-twist-drills.csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.text("size") + " [" + row.text("status") + "] " + row.text("source"),
                        () -> asPrinted(row)));
    }

    private static void asPrinted(Row row) {
        Drill drill = Drill.parse(row.text("size"));
        assertThat(drill.series().name()).isEqualToIgnoringCase(row.text("series"));
        assertThat(drill.diameter().in()).isCloseTo(row.number("diameter_in"), within(PRINTED_INCH));
        assertThat(drill.diameter().mm()).isCloseTo(row.number("diameter_mm"), within(PRINTED_MM));
        assertThat(Drills.list(drill.series())).contains(drill);
    }

    @ParameterizedTest
    @CsvSource({
        "#7, #7",
        "No. 7, #7",
        "no7, #7",
        "number 7, #7",
        "letter F, letter F",
        "F, letter F",
        "f, letter F",
        "5.1, 5.1 mm",
        "5.1 mm, 5.1 mm",
        "13/64, 13/64 in",
        "13/64 in, 13/64 in",
        "1 7/64, 1 7/64 in",
        ".201 in, .201 in",
        "0.5 in, 1/2 in"
    })
    void parse_everyNotation_givesOneName(String written, String designation) {
        assertThat(Drill.parse(written).designation()).isEqualTo(designation);
        assertThat(Drill.parse(designation)).isEqualTo(Drill.parse(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#0", "#81", "letter", "0", "-3", "101", "M6", "#", "FF", "1/0"})
    void parse_whatIsNoDrill_isRefused(String written) {
        assertThatThrownBy(() -> Drill.parse(written)).isInstanceOf(Unreadable.class);
    }

    @Test
    void list_everySeries_risesWithoutRepeats() {
        for (DrillSeries series : DrillSeries.values()) {
            List<Drill> drills = Drills.list(series);
            for (int i = 1; i < drills.size(); i++) {
                assertThat(drills.get(i).diameter())
                        .isGreaterThan(drills.get(i - 1).diameter());
            }
        }
    }

    @Test
    void list_ofRuns_takesEveryDrillBetween() {
        List<Drill> drills =
                DrillListKind.DRILLS.read("1 to 3 by 0.5, #1 to #4, A to C, 1/16 to 1/8, 7", LengthUnit.MILLIMETRE);

        assertThat(drills.stream().map(Drill::designation))
                .containsExactly(
                        "1 mm",
                        "1.5 mm",
                        "2 mm",
                        "2.5 mm",
                        "3 mm",
                        "#4",
                        "#3",
                        "#2",
                        "#1",
                        "letter A",
                        "letter B",
                        "letter C",
                        "1/16 in",
                        "5/64 in",
                        "3/32 in",
                        "7/64 in",
                        "1/8 in",
                        "7 mm");
    }
}
