package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;
import org.assertj.core.data.Offset;

/** Tapers, set-over and sine bars. */
final class TaperRows {
    /** Diameters of steep or self-holding tapers are tabled to four places, from other rounded figures. */
    private static final Offset<Double> TABLED = within(1e-4);

    private TaperRows() {}

    static Topic topic() {
        return Topic.of("tapers.json")
                .table(PublishedRow.class, "published/machine-tapers.csv")
                .table(PublishedRow.class, "published/taper-pins.csv")
                .asks("setover", row -> setOver(row).gives("setOver.in", row, "setover_in"))
                .asks("setover_diams", TaperRows::setOverOfEnds)
                .asks(
                        "setover_exact_vs_approx",
                        row -> setOver(row)
                                .gives("setOver.in", row, "approx_in")
                                .gives("setOverAlongWork.in", row, "exact_sin_in"))
                .asks("taper_per_foot", row -> ends(row, "in").gives("perFoot.in", row, "tpf"))
                .asks("angle_to_taper", TaperRows::perInch)
                .asks("angle_to_taper_per_foot", row -> angle(row).gives("perFoot.in", row, "taper_per_foot"))
                .asks("std_taper_angle", TaperRows::perFoot)
                .asks(
                        "ratio_taper",
                        row -> Query.of("taper")
                                .with("ratio", "1 in " + row.text("one_in"))
                                .gives("halfAngle.deg", row, "compound_half_angle_deg"))
                .asks("morse", TaperRows::morse)
                .asks("compound_slide", row -> ends(row, "mm").gives("halfAngle.deg", row, "half_angle_deg"))
                .asks("sine_bar", TaperRows::sineBar)
                .asks("sine_bar_error", TaperRows::sineBarError)
                .asks(
                        "sine_bar_morse",
                        row -> Query.of("taper")
                                .with("standard", row.text("taper"))
                                .with("bar", row.text("centres_in") + " in")
                                .gives("sineBarStack.in", row, "height_in"))
                .asks("taper_hole_two_balls", TaperRows::balls)
                .asks("plug_over_rolls", TaperRows::rolls)
                .asks("machine-tapers", TaperRows::standard)
                .asksEach("taper-pins", row -> List.of(pin(row), sheared(row)));
    }

    private static Query setOver(PublishedRow row) {
        return Query.of("taper")
                .with("perFoot", row.text("taper_per_foot") + " in")
                .with("workLength", row.text("total_length_in") + " in");
    }

    private static Query setOverOfEnds(PublishedRow row) {
        String unit = " " + row.text("unit");
        return Query.of("taper")
                .with("large", row.text("D") + unit)
                .with("small", row.text("d") + unit)
                .with("length", row.text("taper_length") + unit)
                .with("workLength", row.text("total_length") + unit)
                .gives("setOver." + row.text("unit"), row, "setover");
    }

    private static Query ends(PublishedRow row, String unit) {
        return Query.of("taper")
                .with("large", row.text("D") + " " + unit)
                .with("small", row.text("d") + " " + unit)
                .with("length", row.text(row.has("length_in") ? "length_in" : "length") + " " + unit);
    }

    private static Query angle(PublishedRow row) {
        return Query.of("taper").with("angle", row.text("included_angle_deg") + "°");
    }

    /** For 15° one table prints .28330, which is a slip of the pen: 2 tan 7½° is .26330. */
    private static Query perInch(PublishedRow row) {
        return angle(row)
                .holds(reply -> assertThat(1 / reply.number("ratio"))
                        .isCloseTo(row.want("taper_per_inch"), row.within("taper_per_inch")));
    }

    private static Query perFoot(PublishedRow row) {
        return Query.of("taper")
                .with("perFoot", row.text("taper_per_foot") + " in")
                .gives("halfAngle.deg", row, "compound_half_angle_deg")
                .gives("angle.deg", row, "included_deg");
    }

    private static Query morse(PublishedRow row) {
        return Query.of("taper")
                .with("standard", "MT " + row.text("number"))
                .gives("perFoot.in", row, "taper_per_foot_in")
                .gives("ratio", row, "ratio_1_in")
                .gives("halfAngle.deg", row, "compound_half_angle_deg");
    }

    private static Query sineBar(PublishedRow row) {
        return Query.of("sine")
                .with("angle", row.text("angle_deg") + "°")
                .with("bar", row.text("centres") + " mm")
                .gives("stack.mm", row, "height");
    }

    private static Query sineBarError(PublishedRow row) {
        return Query.of("sine")
                .with("angle", row.text("angle_deg") + "°")
                .with("bar", row.text("centres_mm") + " mm")
                // The sum tells the angle for a thousandth of a millimetre.
                .holds(reply -> assertThat(reply.number("perStep.deg") * 60 * row.number("height_error_mm") / 0.001)
                        .isCloseTo(row.want("angle_error_arcmin"), row.within("angle_error_arcmin")));
    }

    /** The tops lie as far apart as the larger ball stands out of the face and the smaller below it. */
    private static Query balls(PublishedRow row) {
        double tops = row.number("large_protrudes_mm") + row.number("face_to_top_small_mm");
        double radii = (row.number("ball1_mm") - row.number("ball2_mm")) / 2;
        assertThat(tops - radii).isCloseTo(row.want("centre_distance"), row.within("centre_distance"));
        return Query.of("taper")
                .with("largeBall", row.text("ball1_mm") + " mm")
                .with("smallBall", row.text("ball2_mm") + " mm")
                .with("tops", tops + " mm")
                .gives("angle.deg", row, "included_deg");
    }

    private static Query rolls(PublishedRow row) {
        double half = row.number("half_angle_deg");
        return Query.of("taper")
                .with("small", row.text("small_end") + " mm")
                .with("angle", 2 * half + "°")
                .with("rolls", row.text("roll_dia") + " mm")
                .with("height", row.text("slip_height") + " mm")
                .gives("overRolls.low.mm", row, "M1")
                .gives("overRolls.high.mm", row, "M2")
                .holds(reply -> {
                    double rise = reply.number("overRolls.high.mm") - reply.number("overRolls.low.mm");
                    assertThat(Math.toDegrees(Math.atan(rise / 2 / row.number("slip_height"))))
                            .isCloseTo(row.want("half_from_M"), row.within("half_from_M"));
                });
    }

    private static Query standard(PublishedRow row) {
        double oneIn = Double.parseDouble(row.wantText("ratio").replace("1:", ""));
        return Query.of("taper")
                .with("standard", row.text("size"))
                .gives("perFoot.in", row.want("taper_per_ft_in"), within(5e-5))
                .gives("ratio", oneIn, within(oneIn * 1e-4))
                .gives("large.in", row.want("large_dia_in"), TABLED)
                .gives("large.mm", row.want("large_dia_mm"), within(25.4 * 1e-4))
                .gives("small.in", row, "small_dia_in")
                .gives("length.in", row, "length_in")
                .gives("halfAngle.deg", row.want("half_angle_deg"), TABLED);
    }

    /** Number pins are named by the large end at 1 in 48, metric ones by the small end at 1 in 50. */
    private static Query pin(PublishedRow row) {
        boolean byLarge = row.text("named_end").equals("large");
        String unit = row.text("unit");
        return Query.of("taper")
                .with(byLarge ? "large" : "small", row.text("named_dia") + " " + unit)
                .with("ratio", row.text("taper").replaceAll("1:(\\d+).*", "1 in $1"))
                .with("length", row.text("example_length") + " " + unit)
                .gives((byLarge ? "small." : "large.") + unit, row, "other_end_dia");
    }

    /**
     * A pin in a shaft four times as thick is sheared where it leaves the shaft: a number pin tapers from its large end up to
     * there, a metric one is reckoned at its small end.
     */
    private static Query sheared(PublishedRow row) {
        boolean number = row.text("unit").equals("in");
        double named = row.number("named_dia") * (number ? 25.4 : 1);
        double there = number ? named - 4 * named / 48 : named;
        double newtons = 1000 / (4 * named);
        double size = Math.round(there * 1e6) / 1e6;
        return Query.of("pin")
                .with("kind", "taper")
                .with("size", number ? row.text("size").replace("No.", "No. ") : named + " mm")
                .with("shaft", Query.mm(4 * named))
                .with("torque", "1 Nm")
                .holds(reply -> assertThat(Math.sqrt(newtons / reply.number("shearStress.MPa") * 4 / Math.PI))
                        .isCloseTo(size, within(1e-5)));
    }
}
