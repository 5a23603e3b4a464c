package chargehand.trade.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.PublishedRow;
import chargehand.trade.material.Kienzle;
import chargehand.trade.material.Materials;
import chargehand.trade.material.SpeedBand;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cutting against published tables, worked examples and the named formulas. */
class CuttingPublishedTest {
    private static final String ROWS = "cutting.json";

    /** Published speeds are bands of starting values and differ from one another by as much as this. */
    private static final double BAND_SLACK = 0.4;

    static List<PublishedRow> kienzle() {
        return PublishedRow.of(ROWS, "kc_at_h");
    }

    static List<PublishedRow> turning() {
        return PublishedRow.of(ROWS, "turning_power");
    }

    static List<PublishedRow> rpm() {
        return PublishedRow.of(ROWS, "rpm");
    }

    static List<PublishedRow> rpmInch() {
        return PublishedRow.of(ROWS, "rpm_inch");
    }

    static List<PublishedRow> roughness() {
        return PublishedRow.of(ROWS, "roughness_Ra");
    }

    static List<PublishedRow> feeds() {
        return PublishedRow.of(ROWS, "feed_for_Ra");
    }

    static List<PublishedRow> faceMilling() {
        return PublishedRow.of(ROWS, "face_mill_time");
    }

    static Stream<PublishedRow> speeds() {
        return PublishedRow.of(ROWS, "speed_sfm", "speed_uk_m_min").stream();
    }

    private static Kienzle law(PublishedRow row) {
        return new Kienzle(Pressure.megapascals(row.number("kc11")), row.number("mc"), Source.COMMON_PRACTICE);
    }

    @ParameterizedTest
    @MethodSource("kienzle")
    void specificForce_atThickness_followsKienzle(PublishedRow row) {
        assertThat(law(row).specificForce(Length.mm(row.number("h_mm"))).megapascals())
                .isCloseTo(row.want("kc"), row.within("kc"));
    }

    @ParameterizedTest
    @MethodSource("turning")
    void chip_ofTurning_givesForceAndPower(PublishedRow row) {
        Chip chip = Chip.turned(
                Length.mm(row.number("f")), Length.mm(row.number("ap")), Angle.degrees(row.number("kappa")));
        var force = chip.force(law(row));
        double watts =
                Chip.power(force, Speed.metresPerMinute(row.number("vc"))).watts();

        assertThat(chip.thickness().mm()).isCloseTo(row.want("h"), row.within("h"));
        assertThat(chip.width().mm()).isCloseTo(row.want("b"), row.within("b"));
        assertThat(force.newtons()).isCloseTo(row.want("Fc_N"), row.within("Fc_N"));
        assertThat(watts / 1000).isCloseTo(row.want("Pc_kW"), row.within("Pc_kW"));
        assertThat(watts / 1000 / row.number("eta")).isCloseTo(row.want("Pm_kW"), row.within("Pm_kW"));
    }

    @ParameterizedTest
    @MethodSource("rpm")
    void rpm_ofSpeedAndDiameter_isAsComputed(PublishedRow row) {
        assertThat(Rotation.rpm(Speed.metresPerMinute(row.number("v_m_min")), Length.mm(row.number("d_mm")))
                        .rpm())
                .isCloseTo(row.want("rpm"), row.within("rpm"));
    }

    @ParameterizedTest
    @MethodSource("rpmInch")
    void rpm_ofFeetAndInches_isAsComputed(PublishedRow row) {
        assertThat(Rotation.rpm(Speed.feetPerMinute(row.number("sfm")), Length.in(row.number("d_in")))
                        .rpm())
                .isCloseTo(row.want("rpm"), row.within("rpm"));
    }

    @ParameterizedTest
    @MethodSource("roughness")
    void roughness_ofFeedAndNose_isAsPrinted(PublishedRow row) {
        Length feed = Length.mm(row.number("f"));
        Length nose = Length.mm(row.number("nose_r"));

        // Lengths are whole nanometres, so Ra is held to half of one.
        assertThat(Roughness.mean(feed, nose).mm() * 1000).isCloseTo(row.want("Ra_32_um"), within(6e-4));
        assertThat(Roughness.height(feed, nose).mm() * 1000).isCloseTo(row.want("Rt_um"), within(6e-4));
    }

    @Test
    void height_ofScallops_isThatOfTheTextbookExample() {
        PublishedRow row = PublishedRow.of(ROWS, "roughness_peak").getFirst();

        assertThat(Roughness.height(Length.mm(row.number("f")), Length.mm(row.number("nose_r")))
                        .mm())
                .isCloseTo(row.want("Hmax_mm"), row.within("Hmax_mm"));
    }

    @ParameterizedTest
    @MethodSource("feeds")
    void feedFor_finish_isAsComputed(PublishedRow row) {
        assertThat(Roughness.feedFor(Length.mm(row.number("Ra_um") / 1000), Length.mm(row.number("nose_r")))
                        .mm())
                .isCloseTo(row.want("f_mm"), row.within("f_mm"));
    }

    @Test
    void time_ofTurning_isThatOfTheTutorial() {
        PublishedRow row = PublishedRow.of(ROWS, "turn_time").getFirst();
        Length depth = Length.mm(row.number("D0") - row.number("D1")).half();
        List<Length> passes = Passes.equal(depth, Length.mm(row.number("max_doc")));

        assertThat(passes).hasSize((int) row.want("passes"));
        assertThat(CutTime.of(
                                        Length.mm(row.number("L") + row.number("approach")),
                                        Length.mm(row.number("f")),
                                        SpindleSpeed.rpm(row.number("rpm")),
                                        passes.size())
                                .seconds()
                        / 60)
                .isCloseTo(row.want("t_min"), row.within("t_min"));
    }

    @Test
    void time_ofDrilling_countsThePoint() {
        PublishedRow row = PublishedRow.of(ROWS, "drill_time").getFirst();
        // The drill's own feed and speed stand in the row; the run-in of 2 mm is its overtravel.
        var cut = Cut.of(Operation.DRILL, Materials.get("EN3"), ToolMaterial.HSS, Length.mm(row.number("D")))
                .withLength(Length.mm(row.number("depth")))
                .on(new Cut.Machine(
                        List.of(SpindleSpeed.rpm(row.want("rpm"))),
                        List.of(Length.mm(row.number("f"))),
                        Optional.empty()));

        assertThat(CutPlan.of(cut).time().orElseThrow().seconds() / 60)
                .isCloseTo(row.want("t_min"), row.within("t_min"));
    }

    @ParameterizedTest
    @MethodSource("faceMilling")
    void time_ofFaceMilling_countsTheApproach(PublishedRow row) {
        double perMinute = row.number("fz") * row.number("z") * row.number("rpm");
        assertThat(perMinute).isCloseTo(row.want("vf"), within(1e-9));
        var cut = Cut.of(Operation.MILL, Materials.get("EN3"), ToolMaterial.CARBIDE, Length.mm(row.number("D")))
                .withDepth(Length.mm(1))
                .withMilling((int) row.number("z"), Length.mm(row.number("w")))
                .withLength(Length.mm(row.number("L")))
                .on(new Cut.Machine(
                        List.of(SpindleSpeed.rpm(row.number("rpm"))), List.of(Length.mm(perMinute)), Optional.empty()));

        assertThat(CutPlan.of(cut).time().orElseThrow().seconds() / 60)
                .isCloseTo(row.want("t_min"), row.within("t_min"));
    }

    /** Two ways to a drill's torque: Kienzle's law and the handbook's T = kD f^0.75 D^1.8 (its form from memory). */
    @Test
    void torque_ofDrill_agreesWithTheHandbookFormula() {
        PublishedRow row = PublishedRow.of(ROWS, "drill_torque_data_handbook").getFirst();
        var cut = Cut.of(Operation.DRILL, Materials.get("mild steel"), ToolMaterial.HSS, Length.mm(row.number("D")))
                .on(new Cut.Machine(List.of(), List.of(Length.mm(row.number("f"))), Optional.empty()));

        assertThat(CutPlan.of(cut).load().orElseThrow().torque().newtonMetres())
                .isCloseTo(row.want("T_Nm"), withinPercentage(10));
    }

    @ParameterizedTest
    @MethodSource("speeds")
    void speeds_ofMaterial_lieNearThePublishedBand(PublishedRow row) {
        String name = row.text("material")
                .replaceAll("medium carbon 1045.*", "EN8")
                .replaceAll("free cutting ", "")
                .replaceAll(" normalised", "")
                .replaceAll("stainless 304/316", "304")
                .replaceAll("tool steel O1/A2", "O1")
                .replaceAll("^bronze$", "LG2")
                .replaceAll("grey cast iron", "cast iron");
        assertNear(Materials.get(name).hss(), row, "hss_m_min");
        assertNear(Materials.get(name).carbide(), row, "carbide_m_min");
    }

    private static void assertNear(SpeedBand band, PublishedRow row, String figure) {
        List<?> published = (List<?>) row.wanted(figure);
        double low = ((Number) published.getFirst()).doubleValue() * (1 - BAND_SLACK);
        double high = ((Number) published.getLast()).doubleValue() * (1 + BAND_SLACK);
        assertThat(band.low().metresPerMinute()).as(figure).isBetween(low, high);
        assertThat(band.high().metresPerMinute()).as(figure).isBetween(low, high);
    }
}
