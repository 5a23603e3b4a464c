package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;

/** Flats on round bar, bolt circles, packing under a jaw. */
final class SectionRows {
    private SectionRows() {}

    static Topic topic() {
        return Topic.of("sections.json")
                .asks(
                        "hex_corners",
                        row -> across("hexagon")
                                .with("flats", row.text("across_flats") + " mm")
                                .gives("corners.mm", row, "across_corners"))
                .asksEach("from_round", SectionRows::fromRound)
                .asks(
                        "flat_width",
                        row -> across("square")
                                .with("bar", row.text("d") + " mm")
                                .with("flats", row.text("across") + " mm")
                                .gives("flatWidth.mm", row, "flat_width")
                                .gives("depthOfCut.mm", row, "depth_from_surface"))
                .asks("chord", row -> DividingRows.chord(row, "pcd", "chord"))
                .asks("chord_constant", SectionRows::chordOfOne)
                .asks("hole_xy", SectionRows::hole)
                .asks("three_jaw_packing", SectionRows::packing);
    }

    private static Query across(String shape) {
        return Query.of("across").with("shape", shape);
    }

    private static List<Query> fromRound(PublishedRow row) {
        String bar = row.text("d") + " mm";
        return List.of(
                across("square")
                        .with("bar", bar)
                        .gives("largestFromBar.mm", row, "max_square")
                        .gives("depthOfCut.mm", row, "square_flat_depth"),
                across("hexagon")
                        .with("bar", bar)
                        .gives("largestFromBar.mm", row, "max_hex_AF")
                        .gives("depthOfCut.mm", row, "hex_flat_depth"),
                across("octagon").with("bar", bar).gives("largestFromBar.mm", row, "max_octagon_AF"));
    }

    /** On a circle of one metre, so that the factor is the chord in metres. */
    private static Query chordOfOne(PublishedRow row) {
        return Query.of("divide")
                .with("divisions", row.given("n"))
                .with("plates", "15,16,17,18,19,20; 21,23,27,29,31,33")
                .with("diameter", "1000 mm")
                .gives("chord.mm", 1000 * row.want("factor"), within(1000 * row.within("factor").value));
    }

    /** Holes are numbered from one at three o'clock, as the row counts from its start at 0°. */
    private static Query hole(PublishedRow row) {
        int place = (int) row.number("hole") - 1;
        assertThat(row.number("start_deg")).isZero();
        return Query.of("divide")
                .with("divisions", row.given("n"))
                .with("plates", "15,16,17,18,19,20")
                .with("diameter", row.text("pcd") + " mm")
                .says("holes." + place + ".hole", row.given("hole"))
                .gives("holes." + place + ".across.mm", row, "x")
                .gives("holes." + place + ".up.mm", row, "y");
    }

    private static Query packing(PublishedRow row) {
        return Query.of("packing")
                .with("throw", row.text("offset") + " mm")
                .with("diameter", row.text("work_d") + " mm")
                .gives("packing.mm", row, "packing")
                .gives("approximate.mm", row, "rule_1p5e");
    }
}
