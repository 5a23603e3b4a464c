package chargehand.trade.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.PublishedRow;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tapers against worked examples and tables in print. */
class TaperPublishedTest {
    private static final String ROWS = "tapers.json";
    private static final double FIFTH_DECIMAL = 5e-5;

    static Stream<PublishedRow> setOvers() {
        return PublishedRow.of(ROWS, "setover", "setover_diams").stream();
    }

    static List<PublishedRow> angles() {
        return PublishedRow.of(ROWS, "angle_to_taper");
    }

    static List<PublishedRow> anglesPerFoot() {
        return PublishedRow.of(ROWS, "angle_to_taper_per_foot");
    }

    static List<PublishedRow> perFoot() {
        return PublishedRow.of(ROWS, "std_taper_angle");
    }

    static List<PublishedRow> ratios() {
        return PublishedRow.of(ROWS, "ratio_taper");
    }

    static List<PublishedRow> morse() {
        return PublishedRow.of(ROWS, "morse");
    }

    static List<PublishedRow> slides() {
        return PublishedRow.of(ROWS, "compound_slide");
    }

    static List<PublishedRow> sineBars() {
        return PublishedRow.of(ROWS, "sine_bar");
    }

    static List<Row> machineTapers() {
        return Table.read(PublishedRow.class, "published/machine-tapers.csv").rows();
    }

    @ParameterizedTest
    @MethodSource("setOvers")
    void setOver_ofWholeLength_isAsPrinted(PublishedRow row) {
        boolean byDiameters = row.has("D");
        Taper taper = byDiameters
                ? Taper.between(size(row, "D"), size(row, "d"), size(row, "taper_length"))
                : Taper.perFoot(Length.in(row.number("taper_per_foot")));
        Length whole = byDiameters ? size(row, "total_length") : Length.in(row.number("total_length_in"));

        Length setOver = taper.setOver(whole);

        String expected = byDiameters ? "setover" : "setover_in";
        double found = byDiameters && row.text("unit").equals("mm") ? setOver.mm() : setOver.in();
        assertThat(found).isCloseTo(row.want(expected), row.within(expected));
    }

    private static Length size(PublishedRow row, String input) {
        return row.has("unit") && row.text("unit").equals("in")
                ? Length.in(row.number(input))
                : Length.mm(row.number(input));
    }

    @ParameterizedTest
    @MethodSource("angles")
    void included_angle_givesTheTaperPerInchPrinted(PublishedRow row) {
        assertThat(Taper.included(Angle.degrees(row.number("included_angle_deg")))
                        .rate())
                .isCloseTo(row.want("taper_per_inch"), row.within("taper_per_inch"));
    }

    @ParameterizedTest
    @MethodSource("anglesPerFoot")
    void included_angle_givesTheTaperPerFootPrinted(PublishedRow row) {
        assertThat(Taper.included(Angle.degrees(row.number("included_angle_deg")))
                        .perFoot()
                        .in())
                .isCloseTo(row.want("taper_per_foot"), row.within("taper_per_foot"));
    }

    @ParameterizedTest
    @MethodSource("perFoot")
    void perFoot_ofStandard_givesBothAngles(PublishedRow row) {
        Taper taper = Taper.perFoot(Length.in(row.number("taper_per_foot")));

        assertThat(taper.halfAngle().degrees())
                .isCloseTo(row.want("compound_half_angle_deg"), row.within("compound_half_angle_deg"));
        assertThat(taper.included().degrees()).isCloseTo(row.want("included_deg"), row.within("included_deg"));
    }

    @ParameterizedTest
    @MethodSource("ratios")
    void oneIn_ratio_givesTheHalfAngle(PublishedRow row) {
        assertThat(Taper.oneIn(row.number("one_in")).halfAngle().degrees())
                .isCloseTo(row.want("compound_half_angle_deg"), row.within("compound_half_angle_deg"));
    }

    @ParameterizedTest
    @MethodSource("slides")
    void between_diameters_givesTheHalfAngle(PublishedRow row) {
        Taper taper =
                Taper.between(Length.mm(row.number("D")), Length.mm(row.number("d")), Length.mm(row.number("length")));

        assertThat(taper.halfAngle().degrees()).isCloseTo(row.want("half_angle_deg"), row.within("half_angle_deg"));
    }

    @ParameterizedTest
    @MethodSource("morse")
    void morse_taper_isAsTabled(PublishedRow row) {
        Taper taper = StandardTapers.get("MT " + row.text("number")).taper();

        assertThat(taper.perFoot().in()).isCloseTo(row.want("taper_per_foot_in"), within(1e-6));
        assertThat(taper.oneIn()).isCloseTo(row.want("ratio_1_in"), within(5e-4));
        assertThat(taper.halfAngle().degrees()).isCloseTo(row.want("compound_half_angle_deg"), within(5e-6));
    }

    @ParameterizedTest
    @MethodSource("machineTapers")
    void standard_taper_isAsTabled(Row row) {
        StandardTaper standard = StandardTapers.get(row.text("size"));

        assertThat(standard.taper().perFoot().in()).isCloseTo(row.number("taper_per_ft_in"), within(FIFTH_DECIMAL));
        assertThat(standard.large().in()).isCloseTo(row.number("large_dia_in"), within(1e-4));
        assertThat(standard.small().orElseThrow().in()).isCloseTo(row.number("small_dia_in"), within(FIFTH_DECIMAL));
        assertThat(standard.length().orElseThrow().in()).isCloseTo(row.number("length_in"), within(FIFTH_DECIMAL));
        assertThat(standard.taper().halfAngle().degrees()).isCloseTo(row.number("half_angle_deg"), within(1e-4));
    }

    @ParameterizedTest
    @MethodSource("sineBars")
    void sineBar_includedAngle_givesTheStack(PublishedRow row) {
        Taper taper = Taper.included(Angle.degrees(row.number("angle_deg")));

        assertThat(taper.sineBarStack(Length.mm(row.number("centres"))).mm())
                .isCloseTo(row.want("height"), row.within("height"));
    }

    @Test
    void sineBar_morseTwo_takesTheIncludedAngle() {
        PublishedRow row = PublishedRow.of(ROWS, "sine_bar_morse").getFirst();

        Length stack = StandardTapers.get(row.text("taper")).taper().sineBarStack(Length.in(row.number("centres_in")));

        assertThat(stack.in()).isCloseTo(row.want("height_in"), row.within("height_in"));
    }

    @Test
    void setOver_steepTaper_ruleAndSineDifferAsComputed() {
        PublishedRow row = PublishedRow.of(ROWS, "setover_exact_vs_approx").getFirst();
        Taper taper = Taper.perFoot(Length.in(row.number("taper_per_foot")));
        Length whole = Length.in(row.number("total_length_in"));

        assertThat(taper.setOver(whole).in()).isCloseTo(row.want("approx_in"), row.within("approx_in"));
        assertThat(taper.setOverAlongWork(whole).in()).isCloseTo(row.want("exact_sin_in"), row.within("exact_sin_in"));
    }

    @Test
    void perFoot_betweenDiameters_isAsPrinted() {
        PublishedRow row = PublishedRow.of(ROWS, "taper_per_foot").getFirst();
        Taper taper = Taper.between(
                Length.in(row.number("D")), Length.in(row.number("d")), Length.in(row.number("length_in")));

        assertThat(taper.perFoot().in()).isEqualTo(row.want("tpf"));
    }
}
