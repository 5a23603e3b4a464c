package chargehand.trade.fit;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** ISO 286 against tables of limits in print and published worked examples. */
class Iso286PublishedTest {
    private static final String ROWS = "iso286.json";

    static List<PublishedRow> grades() {
        return PublishedRow.of(ROWS, "IT");
    }

    static List<PublishedRow> classes() {
        return PublishedRow.of(ROWS, "shaft", "hole");
    }

    static List<PublishedRow> fits() {
        return PublishedRow.of(ROWS, "fit");
    }

    static List<PublishedRow> formulas() {
        return PublishedRow.of(ROWS, "deviation_formula");
    }

    @ParameterizedTest
    @MethodSource("grades")
    void grade_atUpperBoundOfRange_isAsPrinted(PublishedRow row) {
        String range = row.text("range_mm");
        double upperBound = Double.parseDouble(range.replaceAll(".* to (\\d+) incl", "$1"));
        int grade = Integer.parseInt(row.text("grade").substring(2));

        assertThat(StandardTolerances.of(Length.mm(upperBound), grade)).isEqualTo(Microns.of(row.want("um")));
    }

    @ParameterizedTest
    @MethodSource("classes")
    void deviations_ofClass_areAsPrinted(PublishedRow row) {
        ToleranceZone zone = Iso286.limits(Length.mm(row.number("size_mm")), row.text("cls"));

        assertThat(zone.upper()).isEqualTo(Microns.of(row.want("upper_um")));
        assertThat(zone.lower()).isEqualTo(Microns.of(row.want("lower_um")));
        if (row.expects("max_mm")) {
            assertThat(zone.limits().most()).isEqualTo(Length.mm(row.want("max_mm")));
            assertThat(zone.limits().least()).isEqualTo(Length.mm(row.want("min_mm")));
        }
    }

    @ParameterizedTest
    @MethodSource("fits")
    void fit_ofHoleAndShaft_isAsPrinted(PublishedRow row) {
        Length size = Length.mm(row.number("size_mm"));
        List<String> classes = List.of(row.text("fit").split("/", -1));
        var fit = new Fit(Iso286.limits(size, classes.getFirst()), Iso286.limits(size, classes.getLast()));

        assertThat(fit.clearanceMax()).isEqualTo(Microns.of(row.want("max_clearance_um")));
        assertThat(fit.clearanceMin()).isEqualTo(Microns.of(row.want("min_clearance_um")));
        assertThat(fit.kind().name().toLowerCase(Locale.ROOT)).isEqualTo(row.wantText("type"));
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void deviation_ofTable_isTakenBeforeTheFormula(PublishedRow row) {
        String range = row.text("range_mm");
        double upperBound = Double.parseDouble(range.substring(range.indexOf('-') + 1));
        var wanted = new ToleranceClass(false, row.text("letter"), 7);

        assertThat(ShaftDeviations.listed(Length.mm(upperBound), wanted).value())
                .isEqualTo(Microns.of(row.want("table_um")));
    }
}
