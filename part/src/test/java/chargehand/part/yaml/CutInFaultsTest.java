package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is refused about things cut into bores and faces. */
final class CutInFaultsTest {
    private static PartText hub() {
        return PartText.mm()
                .outside("round: 80, length: 15", "round: 50, length: 25")
                .inside("bore: 25, name: bore");
    }

    private static List<String> inBores(String... features) {
        return FaultsOf.of(hub().inBores(features));
    }

    private static List<String> onEnds(String... features) {
        return FaultsOf.of(hub().onEnds(features));
    }

    @Test
    void hub_withAllOfThem_stands() {
        assertThat(FaultsOf.of(hub().inBores(
                                "keyway: 8 JS9, depth: 3.3, in: bore",
                                "oil-groove: 3, depth: 1.5, in: bore, at: 5, length: 30, around: 180°",
                                "recess: 32, in: bore, at: 18, width: 5")
                        .onEnds(
                                "holes: 8.5, end: A, count: 6, circle: 65",
                                "tapped-holes: M6, end: A, count: 2, circle: 65, depth: 5, around: 30°")))
                .isEmpty();
    }

    @Test
    void inBore_ofABoreThatIsNotThere_isRefused() {
        assertThat(inBores("keyway: 8, depth: 3.3, in: hole")).containsExactly("in-bores[1].in BORE_NAME");
    }

    @Test
    void inBore_ofATappedHole_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 50, length: 30")
                        .inside("tap: M16, name: thread")
                        .inBores("keyway: 4, depth: 2, in: thread")))
                .containsExactly("in-bores[1].in BORE_NAME");
    }

    @Test
    void keyway_deeperThanTheWall_isRefused() {
        assertThat(inBores("keyway: 8, depth: 13, in: bore")).containsExactly("in-bores[1].depth BREAKS_THROUGH");
        assertThat(inBores("keyway: 8, depth: 11.8, in: bore")).containsExactly("in-bores[1].depth WALL_TOO_THIN");
    }

    @Test
    void keyway_underTheRootsOfTeeth_isJudgedByThem() {
        PartText pinion = PartText.mm()
                .outside("teeth: 17, module: 3, pressure-angle: 20°, length: 40")
                .inside("bore: 30, name: bore");

        assertThat(FaultsOf.of(pinion.inBores("keyway: 8, depth: 6, in: bore")))
                .containsExactly("in-bores[1].depth WALL_TOO_THIN");
    }

    @Test
    void keyway_asWideAsTheBore_isRefused() {
        assertThat(inBores("keyway: 25, depth: 3, in: bore")).containsExactly("in-bores[1].keyway WIDER_THAN_BORE");
    }

    @Test
    void keyway_inABlindBore_needsARecessToRunOutIn() {
        PartText blind =
                PartText.mm().outside("round: 50, length: 40").inside("bore: 25, name: bore, from: A, depth: 30");
        String keyway = "keyway: 8, depth: 3.3, in: bore";

        assertThat(FaultsOf.of(blind.inBores(keyway))).containsExactly("in-bores[1].in KEYWAY_WITHOUT_END");
        assertThat(FaultsOf.of(blind.inBores("recess: 32, in: bore, at: 26, width: 4")))
                .isEmpty();
    }

    @Test
    void twoKeyways_inOnePlace_areRefused() {
        assertThat(inBores("keyway: 8, depth: 3.3, in: bore", "keyway: 8, depth: 3.3, in: bore, around: 30°"))
                .containsExactly("in-bores[2].keyway IN_BORE_OVERLAP");
        assertThat(inBores("keyway: 8, depth: 3.3, in: bore", "keyway: 8, depth: 3.3, in: bore, around: 90°"))
                .isEmpty();
    }

    @Test
    void oilGroove_beyondItsBore_isRefused() {
        assertThat(inBores("oil-groove: 3, depth: 1.5, in: bore, at: 20, length: 21"))
                .containsExactly("in-bores[1].at OFF_BORE");
    }

    @Test
    void oilGroove_whereACounterboreTookTheWallAway_isRefused() {
        PartText stepped = hub().inside("counterbore: 35, from: A, depth: 10");

        assertThat(FaultsOf.of(stepped.inBores("oil-groove: 3, depth: 1.5, in: bore, at: 5, length: 20")))
                .containsExactly("in-bores[1].at OFF_BORE");
    }

    @Test
    void oilGroove_withAPlaceAndNoLength_isRefused() {
        assertThat(inBores("oil-groove: 3, depth: 1.5, in: bore, at: 5")).containsExactly("in-bores[1] KEY_MISSING");
    }

    @Test
    void recess_noWiderThanItsBore_isRefused() {
        assertThat(inBores("recess: 25, in: bore, at: 18, width: 5"))
                .containsExactly("in-bores[1].recess RECESS_NOT_WIDER");
    }

    @Test
    void recess_throughTheOutside_isRefused() {
        assertThat(inBores("recess: 51, in: bore, at: 18, width: 5"))
                .containsExactly("in-bores[1].recess BREAKS_THROUGH");
    }

    @Test
    void circle_beyondTheFlange_isRefused() {
        assertThat(onEnds("holes: 8.5, end: A, count: 6, circle: 72"))
                .containsExactly("on-ends[1].circle CIRCLE_OFF_FACE");
    }

    @Test
    void circle_fromTheFarEnd_findsTheFlangeBehindTheBoss() {
        assertThat(onEnds("holes: 8.5, end: B, count: 6, circle: 65")).isEmpty();
        assertThat(onEnds("holes: 8.5, end: B, count: 6, circle: 65, depth: 12"))
                .containsExactly("on-ends[1].depth BREAKS_THROUGH");
        assertThat(onEnds("holes: 8.5, end: B, count: 6, circle: 65, depth: 11"))
                .isEmpty();
    }

    @Test
    void circle_intoTheBore_isRefused() {
        assertThat(onEnds("holes: 8.5, end: A, count: 3, circle: 34"))
                .containsExactly("on-ends[1].circle WALL_TOO_THIN");
    }

    @Test
    void holes_tooManyForTheirCircle_areRefused() {
        assertThat(onEnds("holes: 8.5, end: A, count: 24, circle: 65"))
                .containsExactly("on-ends[1].count CIRCLE_OVERLAP");
        assertThat(onEnds("holes: 8.5, end: A, count: 0, circle: 65")).containsExactly("on-ends[1].count HOLE_COUNT");
    }

    @Test
    void holes_onOneCircleInOnePlace_areRefused() {
        assertThat(onEnds("holes: 8.5, end: A, count: 6, circle: 65", "tapped-holes: M6, end: A, count: 2, circle: 65"))
                .containsExactly("on-ends[2].tapped-holes CIRCLE_OVERLAP");
    }

    @Test
    void cutIn_toABlock_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .line("block: {length: 60, width: 40, thickness: 10}")
                        .onEnds("holes: 8.5, end: A, count: 6, circle: 65")))
                .containsExactly("block KEYS_CLASH");
    }

    /** Width, depth in the shaft and depth in the hub by DIN 6885-1, from memory; a hub is about 1.8 times its bore (common practice). */
    @ParameterizedTest
    @CsvSource({
        "12, 4, 2.5, 1.8",
        "16, 5, 3, 2.3",
        "20, 6, 3.5, 2.8",
        "28, 8, 4, 3.3",
        "36, 10, 5, 3.3",
        "42, 12, 5, 3.3",
        "48, 14, 5.5, 3.8",
        "55, 16, 6, 4.3",
        "62, 18, 7, 4.4"
    })
    void keyways_ofTheStandard_standInShaftAndHub(double shaft, double width, double inShaft, double inHub) {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: " + 1.8 * shaft + ", length: " + 1.5 * shaft)
                        .inside("bore: " + shaft + " H7, name: bore")
                        .inBores("keyway: " + width + " JS9, depth: " + inHub + ", in: bore")))
                .isEmpty();
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: " + shaft + " h6, length: " + 2 * shaft)
                        .across("keyway: " + width + " P9, depth: " + inShaft + ", at: 2, length: " + 1.5 * shaft)))
                .isEmpty();
    }
}
