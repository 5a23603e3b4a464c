package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;

/** Relief valves: the rate of spring and seat, setting by packers, testing with water. */
final class ValveRows {
    private static final double BAR_PER_MPA = 10;

    private ValveRows() {}

    static Topic topic() {
        return Topic.of("relief-valve.json")
                .asks("set_vs_compression", ValveRows::rate)
                .asks("reset", ValveRows::change)
                .asks("overpressure_for_lift", ValveRows::lift)
                .asks(
                        "hydro_test",
                        row -> wall(row.text("working_bar") + " bar")
                                .with("test", row.given("multiplier"))
                                .gives("testPressure.bar", row, "test_bar"))
                .asks(
                        "units",
                        row -> wall(row.text("psi") + " psi")
                                .with("test", 1)
                                .gives("testPressure.bar", row, "bar")
                                .gives("testPressure.MPa", row, "MPa"));
    }

    private static Query wall(String pressure) {
        return Query.of("wall")
                .with("inside", "25 mm")
                .with("outside", "40 mm")
                .with("pressure", pressure)
                .with("material", "LG2");
    }

    private static Query packer(double targetMpa, String seat, String rate) {
        return Query.of("packer")
                .with("target", targetMpa + " MPa")
                .with("tolerance", "0.1 bar")
                .with("most", "20 MPa")
                .with("seat", seat + " mm")
                .with("spring", rate + " N/mm");
    }

    /** Spring and seat tell the rate alone; with it compression and screw follow. */
    private static Query rate(PublishedRow row) {
        double set = row.number("set_MPa");
        return packer(set, row.text("seat_d_mm"), row.text("k_N_mm"))
                .with("trials", "2 mm:2.5 bar")
                .gives("rate.barPerMm", row, "bar_per_mm")
                .holds(reply -> {
                    double rate = reply.number("rate.barPerMm");
                    assertThat(rate * row.number("screw_pitch_mm"))
                            .isCloseTo(row.want("bar_per_turn"), row.within("bar_per_turn"));
                    double compression = set * BAR_PER_MPA / rate;
                    assertThat(compression).isCloseTo(row.want("compression_mm"), row.within("compression_mm"));
                    double force = compression * row.number("k_N_mm");
                    assertThat(force).isCloseTo(row.want("F_N"), row.within("F_N"));
                    assertThat(force / set).isCloseTo(row.want("A_mm2"), row.within("A_mm2"));
                });
    }

    /** The side that can be skimmed is preferred, so a little more than the straight answer dx = dp A / k is made. */
    private static Query change(PublishedRow row) {
        return packer(row.number("p_new"), row.text("seat_d"), row.text("k"))
                .with("trials", "2 mm:" + row.text("p_old") + " MPa")
                .with("step", "0.001 mm")
                .with("gauge", "0.01 bar")
                .holds(reply -> {
                    double straight =
                            (row.number("p_new") - row.number("p_old")) * BAR_PER_MPA / reply.number("rate.barPerMm");
                    assertThat(straight).isCloseTo(row.want("extra_compression"), within(0.01));
                    assertThat(reply.number("change.mm"))
                            .isBetween(row.want("extra_compression") - 0.001, row.want("extra_compression") + 0.2);
                });
    }

    /** A valve without a lip needs the rate times its lift above the set pressure: p = (F0 + k x) / A. */
    private static Query lift(PublishedRow row) {
        double set = row.number("set_MPa");
        return packer(set, row.text("seat_d"), row.text("k"))
                .with("trials", "2 mm:2.5 bar")
                .holds(reply -> {
                    double more = reply.number("rate.barPerMm") / BAR_PER_MPA * row.number("lift");
                    assertThat(set + more).isCloseTo(row.want("p_full_lift_MPa"), row.within("p_full_lift_MPa"));
                    assertThat(100 * more / set)
                            .isCloseTo(row.want("overpressure_pct"), row.within("overpressure_pct"));
                });
    }
}
