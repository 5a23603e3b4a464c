package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Bolts. */
final class BoltRows {
    /** Tensile areas as ISO 898-1 prints them, mm² (from memory). */
    private static final Map<String, Double> PRINTED_AREA = Map.of("M8", 36.6, "M12", 84.3, "M16", 157.0);

    private BoltRows() {}

    static Topic add(Topic topic) {
        return topic.asks("stress_area", row -> bolt(row, "8.8").gives("tensileArea.mm2", row, "As_mm2"))
                .asks("min_uts_load", row -> bolt(row, row.text("cls")).gives("breaking.N", row, "F_N"))
                .asks("proof_load", row -> bolt(row, row.text("cls")).gives("capacity.N", row, "F_N"))
                .asks("preload_75_proof", BoltRows::preloaded)
                .asks("preload_torque", BoltRows::torque)
                .asks("thread_engagement", BoltRows::engagement)
                .asks("strip_simple", BoltRows::stripped)
                .asksEach("bolt_size", BoltRows::size);
    }

    private static Query bolt(PublishedRow row, String grade) {
        return Query.of("bolt").with("thread", row.given("thread")).with("grade", grade);
    }

    /** The rows start from the tensile area as the standard prints it, to three figures; so they are brought to the sum's. */
    private static Query preloaded(PublishedRow row) {
        double printed = Objects.requireNonNull(PRINTED_AREA.get(row.text("thread")));
        return bolt(row, row.text("cls")).holds(reply -> {
            double rounding = printed / reply.number("tensileArea.mm2");
            assertThat(reply.number("preload.N") * rounding).isCloseTo(row.want("F_N"), row.within("F_N"));
            assertThat(reply.number("torque.Nm") * rounding).isCloseTo(row.want("T_Nm_K02"), row.within("T_Nm_K02"));
        });
    }

    /** The sum tightens to a share of the proof load; torque goes with preload. K is 0.2 at a friction of 0.15. */
    private static Query torque(PublishedRow row) {
        return bolt(row, "8.8")
                .with("friction", row.number("K") * 0.15 / 0.2)
                .holds(reply -> assertThat(
                                reply.number("torque.Nm") / reply.number("preload.N") * row.number("preload_N"))
                        .isCloseTo(row.want("T_Nm"), row.within("T_Nm")));
    }

    /** FED-STD-H28 with the limits of classes 2A and 2B; the row starts from an area rounded to four places. */
    private static Query engagement(PublishedRow row) {
        double area = row.number("At_in2");
        double major = row.want("Le_in") / row.want("Le_over_D");
        return bolt(row, "8.8").gives("tensileArea.in2", area, within(5e-5)).holds(reply -> {
            double brought = reply.number("engagement.in") * area / reply.number("tensileArea.in2");
            assertThat(brought).isCloseTo(row.want("Le_in"), row.within("Le_in"));
            assertThat(brought / major).isCloseTo(row.want("Le_over_D"), within(5e-4));
        });
    }

    /** The sum takes six tenths of the bolt's 800 MPa for its strength in shear, the row a figure of its own. */
    private static Query stripped(PublishedRow row) {
        return bolt(row, "8.8")
                .with("engaged", row.text("Le_mm") + " mm")
                .gives("strippingArea.mm2", row, "area_mm2")
                .holds(reply -> assertThat(reply.number("strippingArea.mm2") * row.number("shear_MPa"))
                        .isCloseTo(row.want("strip_N"), row.within("strip_N")))
                .holds(reply -> {
                    double strength = 0.6 * reply.number("breaking.N") / reply.number("tensileArea.mm2");
                    assertThat(reply.number("strippingLoad.N") / strength)
                            .isCloseTo(row.want("area_mm2"), row.within("area_mm2"));
                });
    }

    /** By the tensile area M16 is the first that will do, by the core at 0.8 of the diameter M20: both rules, as printed. */
    private static List<Query> size(PublishedRow row) {
        double needed = row.number("P_N") * row.number("fs") / row.number("Syt");
        double core = row.want("core_d_needed");
        assertThat(Math.sqrt(needed * 4 / Math.PI)).isCloseTo(core, row.within("core_d_needed"));
        return List.of(
                area(row.wantText("by_stress_area"))
                        .holds(reply ->
                                assertThat(reply.number("tensileArea.mm2")).isGreaterThan(needed)),
                area("M14")
                        .holds(reply ->
                                assertThat(reply.number("tensileArea.mm2")).isLessThan(needed)),
                thread(row.wantText("by_core_rule"))
                        .holds(reply ->
                                assertThat(0.8 * reply.number("major.mm")).isGreaterThan(core)),
                thread("M16")
                        .holds(reply ->
                                assertThat(0.8 * reply.number("major.mm")).isLessThan(core)));
    }

    private static Query area(String thread) {
        return Query.of("bolt").with("thread", thread).with("grade", "8.8");
    }

    private static Query thread(String thread) {
        return Query.of("thread").with("thread", thread);
    }
}
