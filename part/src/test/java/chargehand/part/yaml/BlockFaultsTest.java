package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about blocks and their holes. */
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
}
