package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about curved sections and about edges prepared for welding. */
final class CurveFaultsTest {
    private static List<String> faults(String... sections) {
        return FaultsOf.of(PartText.mm().outside(sections));
    }

    @Test
    void ballEnd_stands() {
        assertThat(faults("curve: 10, from: 0, to: 20, form: convex, length: 10", "round: 20, length: 30"))
                .isEmpty();
    }

    @Test
    void swellingAndLongFillet_stand() {
        assertThat(faults("curve: 100, from: 20, to: 20, form: convex, length: 40", "round: 20, length: 30"))
                .isEmpty();
        assertThat(faults("curve: 15, from: 12, to: 20, form: concave, length: 8", "round: 20, length: 30"))
                .isEmpty();
    }

    @Test
    void arc_tooSmallToReach_isRefused() {
        assertThat(faults("curve: 7, from: 0, to: 20, form: convex, length: 10", "round: 20, length: 30"))
                .containsExactly("outside[1].curve CURVE_RADIUS");
    }

    @Test
    void arc_thatGoesBackAlongTheAxis_isRefused() {
        assertThat(faults("curve: 10.5, from: 0, to: 20, form: convex, length: 2", "round: 20, length: 30"))
                .containsExactly("outside[1].curve CURVE_RADIUS");
    }

    @Test
    void point_insideThePart_isRefused() {
        assertThat(faults("round: 20, length: 30", "curve: 10, from: 0, to: 20, form: convex, length: 10"))
                .containsExactly("outside[2].from CURVE_POINT");
    }

    @Test
    void edge_onACurve_isRefused() {
        assertThat(faults(
                        "curve: 10, from: 0, to: 20, form: convex, length: 10, at-b: chamfer 1",
                        "round: 18, length: 30"))
                .containsExactly("outside[1] EDGE_ON_CURVE");
    }

    @Test
    void weldPreparation_onATube_stands() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 60, length: 80, at-b: weld V 6 x 30° gap 2")
                        .inside("bore: 44")))
                .isEmpty();
    }

    @Test
    void weldPreparation_asDeepAsTheWall_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 60, length: 80, at-b: weld bevel 8 x 30°")
                        .inside("bore: 44, name: bore")))
                .containsExactly("inside[1].bore BREAKS_THROUGH");
    }

    @Test
    void weldPreparation_tooFlatToGetInto_isRefused() {
        assertThat(faults("round: 60, length: 80, at-b: weld V 6 x 2°")).containsExactly("outside[1].at-b EDGE_ANGLE");
    }

    @Test
    void weldPreparation_inAHollowCorner_isRefused() {
        assertThat(faults("round: 40, length: 30, at-b: weld V 3 x 30°", "round: 60, length: 30"))
                .containsExactly("outside[1].at-b CHAMFER_IN_HOLLOW");
    }

    @Test
    void weldPreparation_inTheMouthOfABore_isRefused() {
        assertThat(FaultsOf.of(
                        PartText.mm().outside("round: 60, length: 80").inside("bore: 30, mouth: weld V 3 x 30°")))
                .contains("inside[1].mouth WELD_EDGE");
    }

    @Test
    void weldPreparation_withoutJointOrAngle_isNoEdge() {
        assertThat(faults("round: 60, length: 80, at-b: weld 6 x 30°")).containsExactly("outside[1].at-b UNREADABLE");
        assertThat(faults("round: 60, length: 80, at-b: weld V 6")).containsExactly("outside[1].at-b UNREADABLE");
    }
}
