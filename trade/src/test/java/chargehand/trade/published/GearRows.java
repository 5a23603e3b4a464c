package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;

/** Spur wheels, old wheels to be named, racks. */
final class GearRows {
    /** A wheel of so many teeth stands for a rack, whose chord is the limit. */
    private static final int NEARLY_A_RACK = 2000;

    private static final Offset<Double> NEARLY = within(1e-3);

    private GearRows() {}

    static Topic topic() {
        return Topic.of("gears.json")
                .asksEach("dp_blank", GearRows::blank)
                .asks("dp_to_module", row -> wheel(row, "20").gives("module", row, "module"))
                .asks("centre_distance", GearRows::centres)
                .asks("rack", GearRows::rack)
                .asks("chordal", GearRows::chordal)
                .asks("chordal_1DP", GearRows::chordalOfOnePitch)
                .asks(
                        "chordal_rack",
                        row -> Query.of("gear")
                                .with("teeth", NEARLY_A_RACK)
                                .with("module", row.given("module"))
                                .gives("chordal.thickness.mm", row, "s_chord")
                                .gives("chordal.height.mm", row.want("h_chord"), NEARLY))
                .asks("span", GearRows::span)
                .asks("span_dp", GearRows::span)
                .asks("over_pins", row -> pins(row, " mm"))
                .asks("over_pins_dp", row -> pins(row, " in"))
                .asksEach("involute", GearRows::involute)
                .asksEach("cutter_range", GearRows::cutterRange)
                .asks(
                        "cutter_select",
                        row -> Query.of("gear")
                                .with("teeth", row.given("teeth"))
                                .with("module", 2)
                                .says("cutter", row.wanted("cutter"))
                                .says("cutterOtherWay", row.wanted("module_numbering")))
                .asks("identify_from_od", GearRows::named)
                .asks(
                        "constant_chord",
                        row -> Query.of("gear")
                                .with("teeth", 30)
                                .with("module", row.given("module"))
                                .with("pressureAngle", row.text("alpha"))
                                .gives("constantChord.thickness.mm", row, "chord")
                                .gives("constantChord.height.mm", row, "depth"))
                .asks("lewis_Y", GearRows::form)
                .asks("lewis_stress", GearRows::stress)
                .asks("lewis_shigley", GearRows::shigley);
    }

    private static Query wheel(PublishedRow row, String angle) {
        return Query.of("gear")
                .with("teeth", row.has("teeth") ? row.given("teeth") : 20)
                .with(row.has("DP") ? "diametralPitch" : "module", row.given(row.has("DP") ? "DP" : "module"))
                .with("pressureAngle", angle);
    }

    /** The rack's factor is that of the largest wheel which the sum takes. */
    private static Query form(PublishedRow row) {
        return Query.of("gear")
                .with("teeth", row.text("teeth").equals("rack") ? NEARLY_A_RACK : row.given("teeth"))
                .with("module", 2)
                .gives("lewisForm", row, "Y");
    }

    private static Query stress(PublishedRow row) {
        return Query.of("gear")
                .with("teeth", row.given("teeth"))
                .with("module", row.given("module"))
                .with("face", row.text("face") + " mm")
                .with("load", row.text("Ft_N") + " N")
                .gives("lewisForm", row.number("Y"), within(1e-9))
                .gives("toothStress.MPa", row, "sigma_MPa");
    }

    /** Shigley's example turned round: the load that he finds brings the tooth to the stress that he allows. */
    private static Query shigley(PublishedRow row) {
        double allowed = row.number("sigma_all_psi");
        return Query.of("gear")
                .with("teeth", row.given("teeth"))
                .with("diametralPitch", row.given("DP"))
                .with("face", row.text("face_in") + " in")
                .with("load", row.want("Wt_lbf") + " lbf")
                .with("rpm", row.text("rpm") + " rpm")
                .gives("lewisForm", row.number("Y"), within(1e-9))
                .gives("pitchSpeed.ftPerMin", row, "V_ftmin")
                .gives("speedFactor", row, "Kv")
                .gives("toothStress.psi", allowed, within(allowed * 4e-3))
                .holds(reply -> assertThat(reply.number("pitchSpeed.ftPerMin") * row.want("Wt_lbf") / 33_000)
                        .isCloseTo(row.want("hp"), row.within("hp")));
    }

    private static List<Query> blank(PublishedRow row) {
        return List.of(
                wheel(row, "14.5")
                        .gives("pitchDiameter.in", row, "pitch_dia_in")
                        .gives("outside.in", row, "od_in")
                        .gives("circularPitch.in", row, "circular_pitch_in")
                        .gives("module", row, "module_mm")
                        .gives("toothDepth.in", row, "whole_depth_2157_in"),
                wheel(row, "20").gives("toothDepth.in", row, "whole_depth_225_in"));
    }

    private static Query centres(PublishedRow row) {
        boolean inside = row.has("z_internal");
        Query query = Query.of("gear")
                .with("module", row.given("module"))
                .with("teeth", row.given(inside ? "z_pinion" : "z1"))
                .with("mate", row.given(inside ? "z_internal" : "z2"));
        return (inside ? query.with("mateInside", "yes") : query).gives("centres.mm", row, "centre_mm");
    }

    private static Query rack(PublishedRow row) {
        return Query.of("rack")
                .with("teeth", row.given("teeth"))
                .with("module", row.given("module"))
                .with("turns", row.given("turns"))
                .gives("travel.mm", row, "travel_mm");
    }

    private static Query chordal(PublishedRow row) {
        return wheel(row, row.text("alpha"))
                .with("shift", row.given("x"))
                .gives("circularThickness.mm", row, "s")
                .gives("chordal.thickness.mm", row, "s_chord")
                .gives("chordal.height.mm", row, "h_chord")
                .holds(reply -> assertThat(
                                Math.toDegrees(reply.number("circularThickness.mm") / reply.number("pitchDiameter.mm")))
                        .isCloseTo(row.want("theta_deg"), row.within("theta_deg")));
    }

    private static Query chordalOfOnePitch(PublishedRow row) {
        return Query.of("gear")
                .with("teeth", row.given("teeth"))
                .with("diametralPitch", 1)
                .gives("chordal.thickness.in", row, "thickness_1DP_in")
                .gives("chordal.height.in", row, "corrected_addendum_1DP_in");
    }

    private static Query span(PublishedRow row) {
        String figure = row.expects("W_mm") ? "W_mm" : "W_in";
        Query query = wheel(row, row.text("alpha"))
                .with("shift", row.has("x") ? row.given("x") : 0)
                .gives("span.size." + figure.substring(2), row, figure);
        // Left to itself the sum measures over as many teeth as the row does.
        return query.says("span.teeth", row.given("k"));
    }

    private static Query pins(PublishedRow row, String unit) {
        String figure = unit.equals(" in") ? "M_in" : "M_mm";
        return wheel(row, row.text("alpha"))
                .with("pin", row.text(row.has("pin_in") ? "pin_in" : "pin") + unit)
                .gives("overPins.size." + figure.substring(2), row, figure);
    }

    /** From the span: W = m cos α (π (k − 1/2) + z inv α). */
    private static List<Query> involute(PublishedRow row) {
        var queries = new ArrayList<Query>();
        for (String[] angle : List.of(new String[] {"14.5", "inv14_5"}, new String[] {"20", "inv20"})) {
            double cos = Math.cos(Math.toRadians(Double.parseDouble(angle[0])));
            queries.add(Query.of("gear")
                    .with("teeth", 100)
                    .with("module", 1)
                    .with("pressureAngle", angle[0])
                    .holds(reply -> {
                        double teeth = Math.PI * (reply.number("span.teeth") - 0.5);
                        assertThat((reply.number("span.size.mm") / cos - teeth) / 100)
                                .isCloseTo(row.want(angle[1]), row.within(angle[1]));
                    }));
        }
        return queries;
    }

    private static List<Query> cutterRange(PublishedRow row) {
        Object most = row.wanted("max_teeth").equals("rack") ? NEARLY_A_RACK : row.wanted("max_teeth");
        return List.of(cutter(row.wanted("min_teeth"), row), cutter(most, row));
    }

    private static Query cutter(Object teeth, PublishedRow row) {
        return Query.of("gear").with("teeth", teeth).with("module", 1).says("cutter", row.given("cutter"));
    }

    /** The row's module and pitch are the same wheel said both ways; the likeliest candidate is the one that is standard. */
    private static Query named(PublishedRow row) {
        double module = row.want("module");
        boolean standard = Math.abs(module * 4 - Math.rint(module * 4)) < 1e-9;
        double pitch = row.want("DP");
        String system = standard
                ? "module " + (module == Math.rint(module) ? String.valueOf((int) module) : String.valueOf(module))
                : (int) pitch + " DP";
        return Query.of("name-gear")
                .with("teeth", row.given("teeth"))
                .with("outside", row.text("od_mm") + " mm")
                .says("candidates.0.system", system)
                .gives("candidates.0.outsideOff.mm", 0, row.within("module"));
    }
}
