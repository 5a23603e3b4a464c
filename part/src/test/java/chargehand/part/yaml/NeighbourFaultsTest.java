package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about outside sections beside each other. */
final class NeighbourFaultsTest {
    private static List<String> faults(String... sections) {
        return FaultsOf.of(PartText.mm().outside(sections));
    }

    private static List<String> remarks(String... sections) {
        return FaultsOf.remarks(PartText.mm().outside(sections));
    }

    @Test
    void chamfer_inAHollowCorner_isRefused() {
        assertThat(faults("round: 30, length: 10", "round: 20, length: 30, at-a: chamfer 1"))
                .containsExactly("outside[2].at-a CHAMFER_IN_HOLLOW");
    }

    @Test
    void radius_inAHollowCorner_stands() {
        assertThat(faults("round: 30, length: 10", "round: 20, length: 30, at-a: radius 2"))
                .isEmpty();
    }

    @Test
    void radius_higherThanTheShoulder_isRefused() {
        assertThat(faults("round: 30, length: 10", "round: 28, length: 30, at-a: radius 2"))
                .containsExactly("outside[2].at-a EDGE_HIGHER_THAN_STEP");
    }

    @Test
    void radius_underAChamferThatTakesTheShoulder_isRefused() {
        assertThat(faults("round: 30, length: 10, at-b: chamfer 3", "round: 20, length: 30, at-a: radius 2.5"))
                .containsExactly("outside[2].at-a EDGE_HIGHER_THAN_STEP");
        assertThat(faults("round: 30, length: 10, at-b: chamfer 3", "round: 20, length: 30, at-a: radius 2"))
                .isEmpty();
    }

    @Test
    void chamfer_higherThanItsStep_isRefused() {
        assertThat(faults("round: 30, length: 10, at-b: chamfer 2 x 60°", "round: 25, length: 30"))
                .containsExactly("outside[1].at-b EDGE_HIGHER_THAN_STEP");
    }

    @Test
    void chamfer_atTheEndOfThePart_mayReachTheAxis() {
        assertThat(faults("round: 10, length: 30, at-a: chamfer 5.5"))
                .containsExactly("outside[1].at-a EDGE_HIGHER_THAN_STEP");
        assertThat(faults("round: 10, length: 30, at-a: chamfer 4.5")).isEmpty();
    }

    @Test
    void edge_whereBothSectionsAreAlike_isRefused() {
        assertThat(faults("round: 20, length: 10, at-b: chamfer 1", "cone: {from: 20, to: 15}, length: 20"))
                .containsExactly("outside[1].at-b EDGE_WITHOUT_CORNER");
    }

    @Test
    void groove_widerThanANeighbour_isRefused() {
        assertThat(faults("round: 20, length: 10", "groove: 18, length: 3", "round: 17, length: 10"))
                .containsExactly("outside[2].groove GROOVE_NOT_NARROWER");
    }

    @Test
    void groove_atTheEndOfThePart_isRefused() {
        assertThat(faults("groove: 18, length: 3", "round: 20, length: 10"))
                .containsExactly("outside[1].groove GROOVE_NOT_NARROWER");
    }

    @Test
    void groove_shallowerThanTheThreadBesideIt_isRefused() {
        assertThat(faults(
                        "thread: M20, length: 20, at-a: chamfer 2", "groove: 17.5, length: 5", "round: 30, length: 10"))
                .containsExactly("outside[2].groove GROOVE_ABOVE_THREAD_ROOT");
        assertThat(faults(
                        "thread: M20, length: 20, at-a: chamfer 2", "groove: 16.5, length: 5", "round: 30, length: 10"))
                .isEmpty();
    }

    @Test
    void thread_betweenLargerSections_cannotBeBegun() {
        assertThat(faults("round: 30, length: 10", "thread: M20, length: 20", "round: 30, length: 10"))
                .containsExactly("outside[2].thread THREAD_WITHOUT_ENTRY");
    }

    @Test
    void thread_onABarOfItsOwnSize_cannotBeBegunInTheMiddle() {
        assertThat(faults("round: 20, length: 10", "thread: M20, length: 20", "round: 20, length: 10"))
                .containsExactly("outside[2].thread THREAD_WITHOUT_ENTRY");
    }

    @Test
    void thread_betweenGrooves_stands() {
        assertThat(faults(
                        "round: 30, length: 10",
                        "groove: 16, length: 5",
                        "thread: M20, length: 20",
                        "groove: 16, length: 5",
                        "round: 30, length: 10"))
                .isEmpty();
    }

    @Test
    void thread_upToAShoulder_isRemarkedOn() {
        assertThat(remarks("thread: M20, length: 20, at-a: chamfer 2", "round: 30, length: 10"))
                .containsExactly("outside[1].thread THREAD_AT_SHOULDER");
    }

    @Test
    void thread_beginningSharp_isRemarkedOn() {
        assertThat(remarks("thread: M20, length: 20", "round: 20, length: 10"))
                .containsExactly("outside[1].thread THREAD_WITHOUT_CHAMFER");
    }

    @Test
    void thread_runningOutInAShankOfItsSize_needsNoGroove() {
        assertThat(remarks("thread: M20, length: 20, at-a: chamfer 2", "round: 20, length: 10"))
                .isEmpty();
    }

    @Test
    void ballEnd_stands() {
        assertThat(faults("round: 10, length: 30, at-a: radius 5")).isEmpty();
    }

    @Test
    void pointedEnd_stands() {
        assertThat(faults("round: 10, length: 30, at-a: chamfer 5")).isEmpty();
    }
}
