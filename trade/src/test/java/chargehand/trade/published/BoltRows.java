package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.trade.PublishedRow;
import java.util.List;

/** Bolts. */
final class BoltRows {
    /** Proof and preload rows start from the tensile area as printed, to three figures. */
    private static final double THREE_FIGURES = 0.3;

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

    private static Query preloaded(PublishedRow row) {
        return bolt(row, row.text("cls")).holds(reply -> {
            assertThat(reply.number("preload.N")).isCloseTo(row.want("F_N"), withinPercentage(THREE_FIGURES));
            assertThat(reply.number("torque.Nm")).isCloseTo(row.want("T_Nm_K02"), withinPercentage(THREE_FIGURES));
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

    /**
     * FED-STD-H28 with the limits of classes 2A and 2B. The row takes those limits rounded to four places, which moves the
     * engagement by up to half a per cent.
     */
    private static Query engagement(PublishedRow row) {
        return bolt(row, "8.8")
                .gives("tensileArea.in2", row.number("At_in2"), within(5e-5))
                .holds(reply -> {
                    assertThat(reply.number("engagement.in")).isCloseTo(row.want("Le_in"), withinPercentage(0.5));
                    double major = row.want("Le_in") / row.want("Le_over_D");
                    assertThat(reply.number("engagement.in") / major)
                            .isCloseTo(row.want("Le_over_D"), withinPercentage(0.5));
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
