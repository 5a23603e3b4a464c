package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.trade.PublishedRow;

/** Shafts, keys, pins, welds and walls under load. */
final class StrengthRows {
    /** The textbook takes the throat as 0.707 of the leg, the sum as 1/√2. */
    private static final double HIS_THROAT = 0.707 * Math.sqrt(2);

    /** The rows' own tolerance, for a stress worked back from the length that they print. */
    private static final double ROWS_PER_CENT = 1e-3;

    private StrengthRows() {}

    static Topic topic() {
        var topic = Topic.of("strength.json")
                .asks(
                        "shaft_torsion",
                        row -> shaft("round", row.text("d_mm"), row).gives("shearStress.MPa", row, "tau_MPa"))
                .asks("hollow_torsion", StrengthRows::hollow)
                .asks("st_venant", StrengthRows::square)
                .asks("square_end", row -> flats(row, "square"))
                .asks("hex_end", row -> flats(row, "hexagon"))
                .asks("square_from_round_ratio", StrengthRows::squareFromRound)
                .asks("st_venant_rect", StrengthRows::flatBar)
                .asks("key_stress", StrengthRows::key)
                .asks("pin_double_shear", StrengthRows::pin)
                .asks("fillet_throat", StrengthRows::fillet)
                .asks("fillet_double_transverse", StrengthRows::transverse)
                .asks("fillet_combined", StrengthRows::combined)
                .asks("weld_cylinder_head", StrengthRows::head)
                .asks("lame_internal", StrengthRows::thick)
                .asks("thin_hoop", StrengthRows::thin)
                .asks("thick_clavarino", StrengthRows::strained);
        return SpringRows.add(BoltRows.add(topic));
    }

    private static Query shaft(String shape, String size, PublishedRow row) {
        return Query.of("shaft")
                .with("allowable", "60 MPa")
                .with("shape", shape)
                .with("size", size + " mm")
                .with("torque", row.text("T_Nm") + " Nm");
    }

    private static Query hollow(PublishedRow row) {
        return shaft("hollow", row.text("D_mm"), row)
                .with("bore", row.text("d_mm") + " mm")
                .gives("shearStress.MPa", row, "tau_MPa");
    }

    private static Query square(PublishedRow row) {
        return Query.of("shaft")
                .with("allowable", "60 MPa")
                .with("shape", "square")
                .with("size", "100 mm")
                .with("torque", "1000 Nm")
                .holds(reply -> assertThat(reply.number("torsionModulus.mm3") / 1e6)
                        .isCloseTo(row.want("W_over_a3"), row.within("W_over_a3")))
                .holds(reply -> assertThat(reply.number("torsionConstant") / 1e8)
                        .isCloseTo(row.want("J_over_a4"), row.within("J_over_a4")));
    }

    /**
     * The rows were reckoned with constants cut short, so they hold the right figures and name the wrong ones; which is right
     * is settled in {@code ShaftStressTest} by the series of the square and the stress function of the hexagon.
     */
    private static Query flats(PublishedRow row, String shape) {
        return shaft(shape, row.text("across_flats_mm"), row).gives("shearStress.MPa", row, "tau_MPa");
    }

    private static Query flatBar(PublishedRow row) {
        double ratio = row.number("h_over_b");
        return Query.of("shaft")
                .with("allowable", "60 MPa")
                .with("shape", "flat")
                .with("size", "10 mm")
                .with("width", 10 * ratio + " mm")
                .with("torque", "10 Nm")
                .holds(reply -> {
                    assertThat(reply.number("torsionConstant") / (ratio * 1e4))
                            .isCloseTo(row.want("J_over_hb3"), row.within("J_over_hb3"));
                    assertThat(reply.number("torsionModulus.mm3") / (ratio * 1e3))
                            .isCloseTo(row.want("W_over_hb2"), row.within("W_over_hb2"));
                });
    }

    private static Query squareFromRound(PublishedRow row) {
        double round = 60 * Math.PI * Math.pow(30, 3) / 16 / 1000;
        return Query.of("shaft")
                .with("allowable", "60 MPa")
                .with("shape", "square")
                .with("size", 30 / Math.sqrt(2) + " mm")
                .with("torque", "10 Nm")
                .holds(reply -> assertThat(reply.number("torqueCapacity.Nm") / round)
                        .isCloseTo(row.want("torque_ratio"), row.within("torque_ratio")));
    }

    /** The key of the row is the standard one for its shaft: 6×6 on 20, 8×7 on 30, 14×9 on 50 mm. */
    private static Query key(PublishedRow row) {
        return Query.of("key")
                .with("shaft", row.text("d") + " mm")
                .with("torque", row.text("T_Nm") + " Nm")
                .with("hubLength", row.text("L") + " mm")
                .gives("width.mm", row.number("b"), within(1e-9))
                .gives("height.mm", row.number("h"), within(1e-9))
                .gives("shear.MPa", row, "tau_MPa")
                .gives("crushing.MPa", row, "crush_MPa")
                .holds(reply -> assertThat(reply.number("shear.MPa") * row.number("b") * row.number("L"))
                        .isCloseTo(row.want("F_N"), row.within("F_N")));
    }

    private static Query pin(PublishedRow row) {
        return Query.of("pin")
                .with("kind", "dowel")
                .with("size", row.text("pin_d") + " mm")
                .with("shaft", "40 mm")
                .with("thrust", row.text("F_N") + " N")
                .gives("shearStress.MPa", row, "tau_MPa");
    }

    private static Query weld(String leg, double length, double newtons) {
        return Query.of("weld")
                .with("kind", "fillet")
                .with("leg", leg + " mm")
                .with("length", length + " mm")
                .with("load", newtons + " N");
    }

    private static Query fillet(PublishedRow row) {
        return weld(row.text("leg"), row.number("length"), row.number("P_N"))
                .gives("throat.mm", row, "throat")
                .gives("stress.MPa", row, "tau_MPa");
    }

    /** Two fillets share the load, and the textbook adds 15 mm to each for starting and stopping. */
    private static Query transverse(PublishedRow row) {
        double each = row.want("length_each") - row.number("extra");
        boolean byPlate = row.has("width");
        double load = byPlate ? row.number("width") * row.number("t") * row.number("sigma") : row.number("P_N");
        double allowed = row.number(byPlate ? "sigma" : "tau");
        return weld(row.text(byPlate ? "t" : "leg"), 2 * each, load)
                .holds(reply -> assertThat(reply.number("stress.MPa") / HIS_THROAT)
                        .isCloseTo(allowed, withinPercentage(ROWS_PER_CENT)));
    }

    /** The weld across carries what its tension allows; the two along the load carry the rest in shear. */
    private static Query combined(PublishedRow row) {
        double across = 0.707 * row.number("leg") * row.number("width") * row.number("sigma_t");
        double each = row.want("length_each_parallel") - row.number("extra");
        return weld(row.text("leg"), 2 * each, row.number("P_N") - across)
                .holds(reply -> assertThat(reply.number("stress.MPa") / HIS_THROAT)
                        .isCloseTo(row.number("tau"), withinPercentage(ROWS_PER_CENT)));
    }

    /** A butt weld round a cylinder bears the load on its head: at the printed pressure it is at what was allowed. */
    private static Query head(PublishedRow row) {
        double load = row.want("p_MPa") * Math.PI / 4 * Math.pow(row.number("D_mm"), 2);
        double allowed = row.number("sigma") * row.number("eff");
        return Query.of("weld")
                .with("kind", "single-v")
                .with("thickness", row.text("t_mm") + " mm")
                .with("diameter", row.text("D_mm") + " mm")
                .with("load", load + " N")
                .gives("stress.MPa", allowed, within(allowed * 1e-4));
    }

    private static Query wall(double inside, double outside, String pressure) {
        return Query.of("wall")
                .with("inside", inside + " mm")
                .with("outside", outside + " mm")
                .with("pressure", pressure + " MPa")
                .with("material", "EN8");
    }

    /** The other stresses of the row follow from the two at the bore. */
    private static Query thick(PublishedRow row) {
        double p = row.number("p");
        return wall(2 * row.number("ri"), 2 * row.number("ro"), row.text("p"))
                .gives("hoopStress.MPa", row, "hoop_bore")
                .holds(reply -> {
                    double hoop = reply.number("hoopStress.MPa");
                    assertThat(hoop - p).isCloseTo(row.want("hoop_outside"), row.within("hoop_outside"));
                    assertThat((hoop - p) / 2).isCloseTo(row.want("axial_closed"), row.within("axial_closed"));
                    assertThat((hoop + p) / 2).isCloseTo(row.want("max_shear"), row.within("max_shear"));
                    assertThat(p * row.number("ri") / reply.number("thinnest.mm"))
                            .isCloseTo(row.want("thin_wall_hoop"), row.within("thin_wall_hoop"));
                });
    }

    private static Query thin(PublishedRow row) {
        double d = row.number("d");
        return wall(d, d + 2 * row.number("t"), row.text("p"))
                .gives("hoopStress.MPa", row, "hoop")
                .holds(reply ->
                        assertThat(reply.number("hoopStress.MPa") / 2).isCloseTo(row.want("long"), row.within("long")));
    }

    /** Clavarino's stress is Lamé's hoop less Poisson's share of the other two; at the printed wall it is what was allowed. */
    private static Query strained(PublishedRow row) {
        double inside = row.number("Di");
        double outside = inside + 2 * row.want("t_mm");
        double p = row.number("Pi");
        double axial = p / (Math.pow(outside / inside, 2) - 1);
        return wall(inside, outside, row.text("Pi"))
                .holds(reply -> assertThat(reply.number("hoopStress.MPa") - row.number("mu") * (axial - p))
                        .isCloseTo(row.number("allow"), withinPercentage(0.05)));
    }
}
