package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about blocks, their holes and what is milled into them. */
final class BlockFaultsTest {
    private static List<String> faults(String... holes) {
        return FaultsOf.of(PartText.mm()
                .line("block: {length: 60, width: 40, thickness: 20}")
                .holes(holes));
    }

    @Test
    void hole_wellWithinTheBlock_stands() {
        assertThat(faults("drill: 10, x: 20, y: 20")).isEmpty();
    }

    @Test
    void block_ofNoThickness_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().line("block: {length: 60, width: 40, thickness: 0}")))
                .containsExactly("block.thickness SIZE_TOO_SMALL");
    }

    @Test
    void hole_overTheEdge_isRefused() {
        assertThat(faults("drill: 10, x: 58, y: 20")).containsExactly("holes[1].x HOLE_OFF_BLOCK");
        assertThat(faults("drill: 10, x: 20, y: 5")).containsExactly("holes[1].y HOLE_OFF_BLOCK");
    }

    @Test
    void hole_nearTheEdge_isRefused() {
        assertThat(faults("drill: 10, x: 5.3, y: 20")).containsExactly("holes[1].x WALL_TOO_THIN");
    }

    @Test
    void tappedHole_isMeasuredToItsRoot() {
        assertThat(faults("tap: M10, x: 5.4, y: 20")).containsExactly("holes[1].x WALL_TOO_THIN");
    }

    @Test
    void blindHole_withItsPointThrough_isRefused() {
        assertThat(faults("drill: 10, x: 20, y: 20, depth: 17")).containsExactly("holes[1].depth BREAKS_THROUGH");
        assertThat(faults("drill: 10, x: 20, y: 20, depth: 16")).isEmpty();
    }

    @Test
    void blindTappedHole_needsRoomForTheTap() {
        assertThat(faults("tap: M10, x: 20, y: 20, depth: 12")).containsExactly("holes[1].depth BREAKS_THROUGH");
    }

    @Test
    void holes_runningIntoEachOther_areRefused() {
        assertThat(faults("drill: 10, x: 20, y: 20", "ream: 10 H7, x: 27, y: 26"))
                .containsExactly("holes[2].ream HOLES_OVERLAP");
    }

    private static List<String> cutFaults(String... cuts) {
        return FaultsOf.of(PartText.mm()
                .line("block: {length: 60, width: 40, thickness: 20}")
                .cuts(cuts));
    }

    @Test
    void slotsAndSteps_onTheBlock_stand() {
        assertThat(cutFaults(
                        "slot: 12, along: x, at: 20, depth: 5",
                        "slot: 8, along: y, at: 30, depth: 6",
                        "slot: 6, along: x, at: 8, depth: 3, from: 10, length: 20",
                        "step: 10, side: left, depth: 4"))
                .isEmpty();
    }

    @Test
    void slot_throughTheBlock_isRefused() {
        assertThat(cutFaults("slot: 12, along: x, at: 20, depth: 20")).containsExactly("cuts[1].depth BREAKS_THROUGH");
    }

    @Test
    void slot_overTheSide_isRefused() {
        assertThat(cutFaults("slot: 12, along: x, at: 36, depth: 5")).containsExactly("cuts[1].at CUT_OFF_BLOCK");
        assertThat(cutFaults("slot: 12, along: y, at: 5, depth: 5")).containsExactly("cuts[1].at CUT_OFF_BLOCK");
    }

    @Test
    void slot_thatEndsBeyondTheBlock_isRefused() {
        assertThat(cutFaults("slot: 12, along: x, at: 20, depth: 5, from: 45, length: 20"))
                .containsExactly("cuts[1].from CUT_OFF_BLOCK");
    }

    @Test
    void slot_shorterThanWide_isRefused() {
        assertThat(cutFaults("slot: 12, along: x, at: 20, depth: 5, from: 5, length: 10"))
                .containsExactly("cuts[1].length KEYWAY_TOO_SHORT");
    }

    @Test
    void step_asWideAsTheBlock_isRefused() {
        assertThat(cutFaults("step: 40, side: upper, depth: 5")).containsExactly("cuts[1].step CUT_OFF_BLOCK");
    }

    @Test
    void step_onNoSide_isRefused() {
        assertThat(cutFaults("step: 10, side: north, depth: 5")).containsExactly("cuts[1].side UNREADABLE");
    }

    @Test
    void cuts_onATurnedPart_areRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, length: 30").cuts("step: 10, side: left, depth: 5")))
                .containsExactly("cuts KEYS_CLASH");
    }

    @Test
    void counterbore_ofAScrewHead_stands() {
        assertThat(faults("counterbore: 6.6, x: 20, y: 20, head: 11, head-depth: 6.5"))
                .isEmpty();
    }

    @Test
    void counterbore_noWiderThanItsHole_isRefused() {
        assertThat(faults("counterbore: 6.6, x: 20, y: 20, head: 6, head-depth: 6.5"))
                .containsExactly("holes[1].head COUNTERBORE_NOT_WIDER");
    }

    @Test
    void counterbore_asDeepAsTheBlock_isRefused() {
        assertThat(faults("counterbore: 6.6, x: 20, y: 20, head: 11, head-depth: 19.8"))
                .containsExactly("holes[1].head-depth BREAKS_THROUGH");
    }

    @Test
    void counterbore_overTheEdge_isRefused() {
        assertThat(faults("counterbore: 6.6, x: 5, y: 20, head: 11, head-depth: 6.5"))
                .containsExactly("holes[1].x HOLE_OFF_BLOCK");
    }
}
