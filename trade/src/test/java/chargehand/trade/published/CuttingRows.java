package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import org.assertj.core.data.Offset;

/** Cutting: force and power, rotation, finish, time. Speeds and feeds are in {@link SpeedRows}. */
final class CuttingRows {
    /** Roughness is a length, so whole nanometres: half of one either way, in micrometres. */
    private static final Offset<Double> HALF_NANOMETRE = within(6e-4);

    /** A handbook's formula for a drill's torque and Kienzle's law part by as much as this. */
    private static final double TWO_LAWS = 0.1;

    /** A drill's point of 118° stands out by 0.3004 of its diameter, for which the trade takes 0.3. */
    private static final double POINT_RULE = 5e-4;

    private static final String MM = " mm";
    private static final double RUN_IN_MM = 2;
    private static final double SECONDS = 60;

    private CuttingRows() {}

    static Topic topic() {
        var topic = Topic.of("cutting.json")
                .asks("kc_at_h", CuttingRows::specificForce)
                .asks("turning_power", CuttingRows::turned)
                .asks("power_from_mrr", CuttingRows::removed)
                .asks("mill_power", CuttingRows::milled)
                .asksEach("turning_kalpakjian", ThinRod::queries)
                .asks("drill_torque_data_handbook", CuttingRows::drillTorque)
                .asks(
                        "rpm",
                        row -> rotation(row.text("d_mm") + MM, row)
                                .gives("chosen.speed.mPerMin", row.number("v_m_min"), within(1e-3)))
                .asks(
                        "rpm_inch",
                        row -> rotation(row.text("d_in") + " in", row)
                                .gives("chosen.speed.ftPerMin", row.number("sfm"), within(6e-3)))
                .asks("roughness_peak", CuttingRows::peak)
                .asks("roughness_Ra", CuttingRows::mean)
                .asks("feed_for_Ra", CuttingRows::feedFor)
                .asks("turn_time", CuttingRows::turnTime)
                .asks("face_time_const_rpm_vs_css", CuttingRows::faceTime)
                .asks("drill_time", CuttingRows::drillTime)
                .asks("face_mill_time", CuttingRows::millTime);
        return SpeedRows.add(topic);
    }

    static Query cut(String kind, String material, String diameter) {
        return Query.of("cut").with("kind", kind).with("material", material).with("diameter", diameter);
    }

    /** A turned cut by a law of its own. */
    private static Query byLaw(double kc11, double mc, double feed, double depth) {
        return cut("turn", "EN8", "50 mm")
                .with("cuttingForce", kc11 + " MPa")
                .with("thinning", mc)
                .with("depth", depth + MM)
                .with("feeds", Query.mm(feed));
    }

    private static Query specificForce(PublishedRow row) {
        double h = row.number("h_mm");
        return byLaw(row.number("kc11"), row.number("mc"), h, 1)
                .holds(reply -> assertThat(reply.number("force.N") / h).isCloseTo(row.want("kc"), row.within("kc")));
    }

    /** The sum has a knife tool square to the feed: a chip of the row's thickness and width, a millimetre of it at a time. */
    private static Query turned(PublishedRow row) {
        double sin = Math.sin(Math.toRadians(row.number("kappa")));
        double thickness = row.number("f") * sin;
        double width = row.number("ap") / sin;
        assertThat(thickness).isCloseTo(row.want("h"), row.within("h"));
        assertThat(width).isCloseTo(row.want("b"), row.within("b"));
        return byLaw(row.number("kc11"), row.number("mc"), thickness, 1).holds(reply -> {
            double force = reply.number("force.N") * width;
            double watts = reply.number("power.W") / reply.number("chosen.speed.mPerMin") * row.number("vc") * width;
            assertThat(reply.number("force.N") / reply.number("feed.mm")).isCloseTo(row.want("kc"), row.within("kc"));
            assertThat(force).isCloseTo(row.want("Fc_N"), row.within("Fc_N"));
            assertThat(watts / 1000).isCloseTo(row.want("Pc_kW"), row.within("Pc_kW"));
            assertThat(watts / 1000 / row.number("eta")).isCloseTo(row.want("Pm_kW"), row.within("Pm_kW"));
        });
    }

    /** The power for each cubic millimetre in a minute, whatever chip it comes off in. */
    private static double wattsFor(Reply reply) {
        double removed =
                reply.number("chosen.speed.mPerMin") * 1000 * reply.number("feed.mm") * reply.number("depths.0.mm");
        return reply.number("power.W") / removed;
    }

    private static Query removed(PublishedRow row) {
        return byLaw(row.number("kc_MPa"), 0, 0.2, 1).holds(reply -> {
            double watts = wattsFor(reply) * row.number("q_mm3_min") / row.number("eta");
            assertThat(watts / 1000).isCloseTo(row.want("P_kW"), row.within("P_kW"));
        });
    }

    /** Energy for each cubic millimetre, J/mm³, is a thousand times that in N/mm². */
    private static Query milled(PublishedRow row) {
        double removed = row.number("feed_mm_min") * row.number("depth") * row.number("width");
        if (row.has("Uc_J_mm3")) {
            return cut("mill", "EN8", "50 mm")
                    .with("cuttingForce", row.number("Uc_J_mm3") * 1000 + " MPa")
                    .with("thinning", 0)
                    .with("width", row.text("width") + MM)
                    .with("depth", "1 mm")
                    .with("feeds", row.text("feed_mm_min") + MM)
                    .holds(reply -> assertThat(reply.number("power.W") * row.number("depth"))
                            .isCloseTo(row.want("P_W"), row.within("P_W")));
        }
        assertThat(row.text("Uc_formula")).isEqualTo("1.4 t^-0.4");
        return byLaw(1400, 0.4, row.number("t_mean"), 1)
                .holds(reply -> assertThat(wattsFor(reply) * removed).isCloseTo(row.want("P_W"), row.within("P_W")));
    }

    /** Two ways to a drill's torque: Kienzle's law and the handbook's T = kD f^0.75 D^1.8 (its form from memory). */
    private static Query drillTorque(PublishedRow row) {
        double printed = row.want("T_Nm");
        return cut("drill", row.text("material"), row.text("D") + MM)
                .with("feeds", row.text("f") + MM)
                .gives("torque.Nm", printed, within(printed * TWO_LAWS));
    }

    /** On a machine with the row's speed alone, the surface speed is the one that it was worked out from. */
    private static Query rotation(String diameter, PublishedRow row) {
        return cut("turn", "EN8", diameter).with("speeds", row.wantText("rpm") + " rpm");
    }

    private static Query finished(PublishedRow row) {
        return cut("turn", "EN8", "50 mm").with("feeds", row.text("f") + MM).with("nose", row.text("nose_r") + MM);
    }

    /** The height of scallops is four times their mean roughness, f²/8r to f²/32r. */
    private static Query peak(PublishedRow row) {
        return finished(row)
                .holds(reply -> assertThat(4 * reply.number("roughness.mm"))
                        .isCloseTo(row.want("Hmax_mm"), row.within("Hmax_mm")));
    }

    private static Query mean(PublishedRow row) {
        return finished(row).holds(reply -> {
            double micrometres = reply.number("roughness.mm") * 1000;
            assertThat(micrometres).isCloseTo(row.want("Ra_32_um"), HALF_NANOMETRE);
            assertThat(4 * micrometres).isCloseTo(row.want("Rt_um"), within(4 * HALF_NANOMETRE.value));
            assertThat(micrometres * 32 * 0.0321).isCloseTo(row.want("Ra_0321_um"), HALF_NANOMETRE);
        });
    }

    /** The sum never feeds faster than is usual; where the finish would let it, the row's feed is held to that finish. */
    private static Query feedFor(PublishedRow row) {
        return cut("turn", "EN8", "50 mm")
                .with("feeds", row.wantText("f_mm") + MM)
                .with("nose", row.text("nose_r") + MM)
                .holds(reply -> assertThat(reply.number("roughness.mm") * 1000)
                        .isCloseTo(row.number("Ra_um"), within(2 * HALF_NANOMETRE.value)));
    }

    /** The row's approach is put into the length, less the 2 mm that the sum adds; a pass of the row is a cut of the sum. */
    private static Query turnTime(PublishedRow row) {
        double depth = (row.number("D0") - row.number("D1")) / 2;
        double passes = Math.ceil(depth / row.number("max_doc") - 1e-9);
        String rpm = row.has("rpm") ? row.text("rpm") : row.wantText("rpm");
        assertThat(passes).isEqualTo(row.want("passes"));
        return cut("turn", "EN8", row.text("D0") + MM)
                .with("depth", depth / passes + MM)
                .with("length", row.number("L") + row.number("approach") - RUN_IN_MM + MM)
                .with("speeds", rpm + " rpm")
                .with("feeds", row.text("f") + MM)
                .says("passes", 1)
                .holds(reply -> assertThat(passes * reply.number("time.s") / SECONDS)
                        .isCloseTo(row.want("t_min"), row.within("t_min")));
    }

    /** From the rim to the centre at one speed of the spindle; at one speed of the surface, half that. */
    private static Query faceTime(PublishedRow row) {
        double rpm = 1000 * row.number("v") / (Math.PI * row.number("D"));
        double shorter = row.number("D") - 2 * RUN_IN_MM;
        return cut("face", "EN8", shorter + MM)
                .with("depth", "1 mm")
                .with("speeds", rpm + " rpm")
                .with("feeds", row.text("f") + MM)
                .holds(reply -> {
                    double minutes = reply.number("time.s") / SECONDS;
                    assertThat(minutes).isCloseTo(row.want("const_rpm_min"), row.within("const_rpm_min"));
                    assertThat(minutes / 2).isCloseTo(row.want("css_min"), row.within("css_min"));
                });
    }

    /** The point is counted, and the row's overtravel is the sum's run-in. */
    private static Query drillTime(PublishedRow row) {
        assertThat(row.number("overtravel")).isEqualTo(RUN_IN_MM);
        return cut("drill", "EN3", row.text("D") + MM)
                .with("depth", row.text("depth") + MM)
                .with("speeds", row.wantText("rpm") + " rpm")
                .with("feeds", row.text("f") + MM)
                .gives("chosen.speed.mPerMin", row.number("v"), within(1e-3))
                .holds(reply -> {
                    assertThat(reply.number("time.s") / SECONDS).isCloseTo(row.want("t_min"), row.within("t_min"));
                    double path = reply.number("time.s") / SECONDS * reply.number("feedRate.mPerMin") * 1000;
                    assertThat(path - row.number("depth") - RUN_IN_MM)
                            .isCloseTo(row.want("point_len"), within(POINT_RULE * row.number("D")));
                });
    }

    private static Query millTime(PublishedRow row) {
        double perMinute = row.number("fz") * row.number("z") * row.number("rpm");
        assertThat(perMinute).isCloseTo(row.want("vf"), within(1e-9));
        return cut("mill", "EN3", row.text("D") + MM)
                .with("tool", "carbide")
                .with("depth", "1 mm")
                .with("teeth", row.given("z"))
                .with("width", row.text("w") + MM)
                .with("length", row.text("L") + MM)
                .with("speeds", row.text("rpm") + " rpm")
                .with("feeds", row.want("vf") + MM)
                .holds(reply -> {
                    double minutes = reply.number("time.s") / SECONDS;
                    assertThat(minutes).isCloseTo(row.want("t_min"), row.within("t_min"));
                    assertThat(minutes * perMinute - row.number("L"))
                            .isCloseTo(row.want("approach"), row.within("approach"));
                });
    }
}
