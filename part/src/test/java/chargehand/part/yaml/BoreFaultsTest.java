package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about bores and the walls round them. */
final class BoreFaultsTest {
    private static final String BAR = "round: 40, length: 60";

    private static List<String> faults(String... bores) {
        return FaultsOf.of(PartText.mm().outside(BAR).inside(bores));
    }

    @Test
    void depth_ofAllThePart_isRefused() {
        assertThat(faults("drill: 10, from: A, depth: 60")).containsExactly("inside[1].depth BORE_LONGER_THAN_PART");
    }

    @Test
    void point_throughTheFarEnd_isRefused() {
        assertThat(faults("drill: 20, from: A, depth: 56")).containsExactly("inside[1].depth BREAKS_THROUGH");
        assertThat(faults("bore: 20, from: A, depth: 56")).isEmpty();
    }

    @Test
    void bottom_nearlyAtTheFarEnd_isRefused() {
        assertThat(faults("bore: 20, from: B, depth: 59.7")).containsExactly("inside[1].depth BREAKS_THROUGH");
    }

    @Test
    void bores_thatNearlyMeet_areRefused() {
        assertThat(faults("bore: 20, from: A, depth: 30", "bore: 20, from: B, depth: 29.8"))
                .containsExactly("inside[1].bore WALL_TOO_THIN");
    }

    @Test
    void bores_thatMeet_stand() {
        assertThat(faults("bore: 20, from: A, depth: 30", "bore: 10, from: B, depth: 30"))
                .isEmpty();
    }

    @Test
    void bore_widerThanThePart_isRefused() {
        assertThat(faults("bore: 41")).containsExactly("inside[1].bore BREAKS_THROUGH");
    }

    @Test
    void wall_ofLessThanHalfAMillimetre_isRefused() {
        assertThat(faults("bore: 39.2")).containsExactly("inside[1].bore WALL_TOO_THIN");
        assertThat(faults("bore: 38.8")).isEmpty();
    }

    @Test
    void wall_belowAGroove_isMeasuredThere() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 40, length: 20", "groove: 30, length: 5", "round: 40, length: 20")
                        .inside("bore: 29.5")))
                .containsExactly("inside[1].bore WALL_TOO_THIN");
    }

    @Test
    void wall_belowAThread_isMeasuredToItsRoot() {
        var outside = PartText.mm().outside("thread: M20, length: 30, at-a: chamfer 1.5", "round: 30, length: 10");

        assertThat(FaultsOf.of(outside.inside("drill: 16.2"))).containsExactly("inside[1].drill WALL_TOO_THIN");
    }

    @Test
    void wall_betweenBottomAndShoulder_isMeasuredAlongTheAxis() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 40, length: 20", "round: 10, length: 20")
                        .inside("bore: 30, from: A, depth: 19.8")))
                .containsExactly("inside[1].bore WALL_TOO_THIN");
    }

    @Test
    void wall_betweenFlats_isMeasuredToTheirMiddle() {
        assertThat(FaultsOf.of(PartText.mm().outside("square: 20, length: 20").inside("bore: 20.5")))
                .containsExactly("inside[1].bore BREAKS_THROUGH");
    }

    @Test
    void mouthAndOutsideChamfers_thatMeet_areRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 20, length: 20, at-a: chamfer 1")
                        .inside("bore: 16, mouth: chamfer 1")))
                .containsExactly("inside[1].bore BREAKS_THROUGH");
    }

    @Test
    void mouth_higherThanTheStepItLiesOn_isRefused() {
        assertThat(faults("bore: 20, mouth: chamfer 2", "counterbore: 23, from: A, depth: 10"))
                .containsExactly("inside[1].mouth EDGE_HIGHER_THAN_STEP");
        assertThat(faults("bore: 20, mouth: chamfer 1.5", "counterbore: 23, from: A, depth: 10"))
                .isEmpty();
    }

    @Test
    void mouth_whereAConeLeavesNoStep_isRefused() {
        assertThat(faults("bore: 20, mouth: chamfer 0.5", "cone: 90°, from: A, mouth: 26, to: 20"))
                .containsExactly("inside[1].mouth EDGE_HIGHER_THAN_STEP");
    }

    @Test
    void tappedHole_ofItsFullSize_hasNothingToCutIn() {
        assertThat(faults("tap: M10, from: A, depth: 20", "drill: 10, from: A, depth: 30"))
                .containsExactly("inside[1].tap NO_MATERIAL_FOR_THREAD");
    }

    @Test
    void tappedHole_withAnOrdinaryTappingDrill_stands() {
        assertThat(faults("tap: M10, from: A, depth: 20", "drill: 8.5, from: A, depth: 26"))
                .isEmpty();
    }

    @Test
    void tappedHole_belowACounterbore_stands() {
        assertThat(faults("tap: M10, from: A, depth: 30", "counterbore: 12, from: A, depth: 5"))
                .isEmpty();
    }

    @Test
    void tappingHole_noDeeperThanTheThread_isRefused() {
        assertThat(faults("tap: M10, from: A, depth: 20", "drill: 8.5, from: A, depth: 21"))
                .containsExactly("inside[1].depth TAPPING_HOLE_TOO_SHORT");
    }

    @Test
    void insideThread_isMeasuredToItsRoot() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 10.5, length: 20").inside("tap: M10")))
                .containsExactly("inside[1].tap WALL_TOO_THIN");
    }

    @Test
    void tappedHole_withoutRoomBeforeTheFarEnd_isRefused() {
        assertThat(faults("tap: M10, from: A, depth: 55")).containsExactly("inside[1].depth BREAKS_THROUGH");
    }

    @Test
    void cone_widerInsideThanAtItsMouth_isRefused() {
        assertThat(faults("cone: 90°, from: A, mouth: 10, to: 12")).containsExactly("inside[1].to CONE_NOT_NARROWING");
    }

    @Test
    void cone_deeperThanThePart_isRefused() {
        assertThat(faults("cone: 10°, from: A, mouth: 30, to: 10"))
                .containsExactly("inside[1].depth BORE_LONGER_THAN_PART");
    }

    @Test
    void mouth_deeperThanItsBore_isRefused() {
        assertThat(faults("counterbore: 20, from: A, depth: 2, mouth: chamfer 3"))
                .containsExactly("inside[1].mouth EDGE_LONGER_THAN_SECTION");
    }

    @Test
    void letters_ofAShaftInside_areRefused() {
        assertThat(faults("ream: 10 h7")).containsExactly("inside[1].ream LETTERS_OF_OTHER_KIND");
    }

    @Test
    void bore_withinALargerOne_isRemarkedOn() {
        assertThat(FaultsOf.remarks(PartText.mm().outside(BAR).inside("drill: 10", "bore: 20")))
                .containsExactly("inside[1].drill BORE_WITHIN_LARGER");
    }

    @Test
    void mouth_deeperThanTheThroughBoreItIsOn_isRefused() {
        assertThat(faults("bore: 10, mouth: chamfer 70")).containsExactly("inside[1].mouth EDGE_LONGER_THAN_SECTION");
    }

    @Test
    void mouth_deeperThanWhatIsLeftBelowACounterbore_isRefused() {
        assertThat(faults("bore: 10, from: A, depth: 12, mouth: chamfer 3", "counterbore: 20, from: A, depth: 10"))
                .containsExactly("inside[1].mouth EDGE_LONGER_THAN_SECTION");
    }
}
