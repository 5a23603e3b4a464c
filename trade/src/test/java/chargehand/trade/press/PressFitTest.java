package chargehand.trade.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.material.Physical;
import chargehand.trade.sum.Figure;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PressFitTest {
    private static final String ROWS = "press-fits.json";
    private static final Physical STEEL = new Physical(7850, Pressure.megapascals(207_000), 0.3, 11.7e-6);

    static List<PublishedRow> fits() {
        return PublishedRow.of(ROWS, "press_fit");
    }

    static List<PublishedRow> heats() {
        return PublishedRow.of(ROWS, "shrink_temperature");
    }

    private static Physical physical(PublishedRow row, String part) {
        return new Physical(7850, Pressure.megapascals(row.number("E_" + part)), row.number("nu_" + part), 11.7e-6);
    }

    @ParameterizedTest
    @MethodSource("fits")
    void pressure_ofHubOnShaft_isThatOfLame(PublishedRow row) {
        var fit = new PressFit(
                Length.mm(row.number("d")),
                Length.mm(row.number("diametral_interference")),
                Length.mm(row.number("hub_od")),
                Length.mm(row.number("shaft_bore")),
                physical(row, "hub"),
                physical(row, "shaft"));
        double pressure = fit.pressure().megapascals();
        double grip = row.number("mu") * pressure * Math.PI * row.number("d") * row.number("length");

        assertThat(pressure).isCloseTo(row.want("p_MPa"), row.within("p_MPa"));
        assertThat(grip).isCloseTo(row.want("axial_N"), row.within("axial_N"));
        assertThat(grip * row.number("d") / 2000).isCloseTo(row.want("torque_Nm"), row.within("torque_Nm"));
        assertThat(fit.hubStress().megapascals())
                .isCloseTo(row.want("hub_bore_hoop_MPa"), row.within("hub_bore_hoop_MPa"));
        assertThat(fit.shaftStress().megapascals())
                .isCloseTo(row.want("shaft_inner_hoop_MPa"), row.within("shaft_inner_hoop_MPa"));
    }

    @Test
    void pressure_inInchesAndPounds_isTheSameLaw() {
        PublishedRow row = PublishedRow.of(ROWS, "press_fit_inch").getFirst();
        var physical = new Physical(7850, Pressure.psi(row.number("E_hub")), row.number("nu_hub"), 11.7e-6);
        var fit = new PressFit(
                Length.in(row.number("d")),
                Length.in(row.number("diametral_interference")),
                Length.in(row.number("hub_od")),
                Length.ZERO,
                physical,
                physical);

        // The row's columns are named for MPa but hold psi, as its note says.
        assertThat(fit.pressure().psi()).isCloseTo(row.want("p_MPa"), withinPercentage(0.01));
        assertThat(fit.hubStress().psi()).isCloseTo(row.want("hub_bore_hoop_MPa"), withinPercentage(0.01));
    }

    /** Bhandari's compound tube turned round: his interference, by his shrinkage pressure. */
    @Test
    void pressure_ofCompoundTube_isThatOfTheTextbook() {
        PublishedRow row = PublishedRow.of(ROWS, "compound_tube").getFirst();
        var physical = new Physical(7850, Pressure.megapascals(row.number("E")), 0.3, 11.7e-6);
        double interference = row.want("inner_tube_od") - row.want("jacket_id");
        var fit = new PressFit(
                Length.mm(row.number("D2")),
                Length.mm(interference),
                Length.mm(row.number("D3")),
                Length.mm(row.number("D1")),
                physical,
                physical);

        assertThat(fit.pressure().megapascals()).isCloseTo(row.want("shrink_p_MPa"), withinPercentage(0.01));
        assertThat(fit.hubStress().megapascals()).isCloseTo(row.number("limit_MPa"), withinPercentage(0.01));
    }

    @Test
    void pressure_sameMaterialSolidShaft_isTheShortFormula() {
        var random = new Random(26);
        for (int i = 0; i < 200; i++) {
            double d = 10 + random.nextDouble() * 90;
            double outside = d * (1.2 + random.nextDouble() * 2);
            double interference = d * (0.0003 + random.nextDouble() * 0.001);
            var fit =
                    new PressFit(Length.mm(d), Length.mm(interference), Length.mm(outside), Length.ZERO, STEEL, STEEL);
            // p = E δ / (2 d) (1 − d²/D²), which is what Lamé comes to for one material and a solid shaft.
            assertThat(fit.pressure().megapascals())
                    .isCloseTo(
                            207_000 * interference / (2 * d) * (1 - d * d / outside / outside), withinPercentage(0.01));
        }
    }

    @Test
    void pressure_twiceTheInterference_isTwice() {
        var once = new PressFit(Length.mm(40), Length.mm(0.02), Length.mm(70), Length.mm(15), STEEL, STEEL);
        var twice = new PressFit(Length.mm(40), Length.mm(0.04), Length.mm(70), Length.mm(15), STEEL, STEEL);

        assertThat(twice.pressure().megapascals()).isCloseTo(2 * once.pressure().megapascals(), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("heats")
    void heat_ofHub_isThatOfTheRule(PublishedRow row) {
        double d = row.number("d");
        Ask ask = Ask.of(
                "press-fit",
                "size",
                row.text("d"),
                "interference",
                row.text("interference") + " mm",
                "hubOutside",
                Double.toString(2 * d),
                "length",
                "60",
                "hubMaterial",
                "EN8",
                "shaftMaterial",
                "EN8");
        double heat =
                ((Figure.OfTemperature) ask.figure("heatHubTo")).temperature().celsius();

        // The row states the room to drop over; the sum takes a thousandth of the diameter, and EN8's 11.7 millionths.
        double rise = (row.want("rise_K") * row.number("alpha") * d - row.number("assembly_clearance") + d / 1000)
                / (11.7e-6 * d);
        assertThat(heat).isCloseTo(20 + rise, within(0.05));
    }

    @Test
    void pressFit_wronglyAsked_isRefusedBesideItsField() {
        String[] good = {
            "size",
            "50",
            "interference",
            "0.05 mm",
            "hubOutside",
            "100",
            "length",
            "60",
            "hubMaterial",
            "EN8",
            "shaftMaterial",
            "EN8"
        };
        with(good, "hubOutside", "50").isRefusedAt("hubOutside", "larger outside");
        with(good, "interference", "5 mm").isRefusedAt("interference", "hundredth of the diameter");
        with(good, "size", "0").isRefusedAt("size", "more than nothing");
    }

    private static Ask with(String[] asked, String field, String value) {
        String[] changed = asked.clone();
        for (int i = 0; i < changed.length; i += 2) {
            changed[i + 1] = changed[i].equals(field) ? value : changed[i + 1];
        }
        return Ask.of("press-fit", changed);
    }
}
