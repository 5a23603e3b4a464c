package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.trade.PublishedRow;
import org.assertj.core.data.Percentage;

/** Press and shrink fits. The rows' steel of 207 GPa and 0.3 is that of EN8 in the table. */
final class PressRows {
    private static final String STEEL = "EN8";
    private static final double STEEL_MPA = 207_000;
    private static final double EXPANSION = 11.7e-6;
    private static final double MPA_PER_PSI = 6.894757e-3;

    /** The tolerance of the rows, for figures brought from their steel to ours. */
    private static final Percentage ROWS = withinPercentage(0.01);

    private PressRows() {}

    static Topic topic() {
        return Topic.of("press-fits.json")
                .asks("press_fit", PressRows::metric)
                .asks("press_fit_inch", PressRows::inch)
                .asks("compound_tube", PressRows::compound)
                .asks("shrink_temperature", PressRows::heated)
                .asks("shrink_fit_cool", PressRows::cooled);
    }

    private static Query fit(String size, String interference, String outside, String length) {
        return Query.of("press-fit")
                .with("size", size)
                .with("interference", interference)
                .with("hubOutside", outside)
                .with("length", length)
                .with("hubMaterial", STEEL)
                .with("shaftMaterial", STEEL);
    }

    private static Query fit(PublishedRow row, String unit) {
        return fit(
                        row.text("d") + unit,
                        row.text("diametral_interference") + unit,
                        row.text("hub_od") + unit,
                        row.text("length") + unit)
                .with("friction", row.given("mu"));
    }

    private static Query metric(PublishedRow row) {
        return fit(row, " mm")
                .gives("pressure.MPa", row, "p_MPa")
                .gives("force.N", row, "axial_N")
                .gives("torque.Nm", row, "torque_Nm")
                .gives("hubStress.MPa", row, "hub_bore_hoop_MPa")
                .gives("shaftStress.MPa", row, "shaft_inner_hoop_MPa");
    }

    /** The row's columns are named for MPa but hold psi and its torque inch pounds over a thousand, as its note says. */
    private static Query inch(PublishedRow row) {
        double stiffer = row.number("E_hub") * MPA_PER_PSI / STEEL_MPA;
        return fit(row, " in").holds(reply -> {
            near(reply.number("pressure.psi") * stiffer, row.want("p_MPa"));
            near(reply.number("force.lbf") * stiffer, row.want("axial_N"));
            near(reply.number("torque.lbfft") * 12 / 1000 * stiffer, row.want("torque_Nm"));
            near(reply.number("hubStress.psi") * stiffer, row.want("hub_bore_hoop_MPa"));
            near(reply.number("shaftStress.psi") * stiffer, row.want("shaft_inner_hoop_MPa"));
        });
    }

    private static void near(double found, double printed) {
        assertThat(found).isCloseTo(printed, ROWS);
    }

    /** The textbook's compound tube turned round: his interference, by his shrinkage pressure. */
    private static Query compound(PublishedRow row) {
        double interference = row.want("inner_tube_od") - row.want("jacket_id");
        return fit(row.text("D2") + " mm", Query.mm(interference), row.text("D3") + " mm", "100 mm")
                .with("bore", row.text("D1") + " mm")
                .holds(reply -> {
                    near(reply.number("pressure.MPa"), row.want("shrink_p_MPa"));
                    near(reply.number("hubStress.MPa"), row.number("limit_MPa"));
                });
    }

    /** The row states the room to drop over; the sum takes a thousandth of the diameter, and EN8's 11.7 millionths. */
    private static Query heated(PublishedRow row) {
        double d = row.number("d");
        return fit(row.text("d") + " mm", row.text("interference") + " mm", 2 * d + " mm", "60 mm")
                .holds(reply -> {
                    double grown = (reply.number("heatHubTo.C") - row.number("ambient")) * EXPANSION * d;
                    double rise = (grown - d / 1000 + row.number("assembly_clearance")) / (row.number("alpha") * d);
                    assertThat(rise).isCloseTo(row.want("rise_K"), row.within("rise_K"));
                    assertThat(rise + row.number("ambient")).isCloseTo(row.want("target_C"), row.within("target_C"));
                });
    }

    /** The row takes 10.5 millionths, the table 11.7 for carbon steel: the same rule, so in that proportion. */
    private static Query cooled(PublishedRow row) {
        return Query.of("expand")
                .with("size", row.text("d") + " mm")
                .with("material", STEEL)
                .with("from", row.text("cool_from") + " C")
                .with("to", row.text("cool_to") + " C")
                .holds(reply -> assertThat(-reply.number("change.mm") * row.number("alpha") / EXPANSION)
                        .isCloseTo(row.want("shrink_mm"), row.within("shrink_mm")));
    }
}
