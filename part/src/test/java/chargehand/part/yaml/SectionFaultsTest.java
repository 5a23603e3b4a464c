package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about one outside section by itself. */
final class SectionFaultsTest {
    private static List<String> faults(String section) {
        return FaultsOf.of(PartText.mm().outside(section));
    }

    @Test
    void round_ofUsualSize_stands() {
        assertThat(faults("round: 20, length: 30")).isEmpty();
    }

    @Test
    void diameter_ofNothing_isRefused() {
        assertThat(faults("round: 0, length: 30")).containsExactly("outside[1].round SIZE_TOO_SMALL");
    }

    @Test
    void length_belowNothing_isRefused() {
        assertThat(faults("round: 20, length: -3")).containsExactly("outside[1].length SIZE_TOO_SMALL");
    }

    @Test
    void diameter_ofElevenMetres_isRefused() {
        assertThat(faults("round: 11 m, length: 30")).containsExactly("outside[1].round SIZE_TOO_LARGE");
    }

    @Test
    void limits_reachingDownToNothing_areRefused() {
        assertThat(faults("round: 20, length: 0.5 ±0.5")).containsExactly("outside[1].length LIMITS_TOO_WIDE");
    }

    @Test
    void generalTolerance_largerThanTheSize_isRefused() {
        assertThat(faults("round: 20, length: 0.05")).containsExactly("outside[1].length LIMITS_TOO_WIDE");
    }

    @Test
    void letters_ofAHoleOutside_areRefused() {
        assertThat(faults("round: 20 H7, length: 30")).containsExactly("outside[1].round LETTERS_OF_OTHER_KIND");
    }

    @Test
    void letters_onALength_mayBeEither() {
        assertThat(faults("round: 20 h7, length: 30 H11")).isEmpty();
    }

    @Test
    void cone_withEqualEnds_isRefused() {
        assertThat(faults("cone: {from: 20, to: 20}, length: 30")).containsExactly("outside[1].cone CONE_IS_LEVEL");
    }

    @Test
    void cone_nearlyAFace_isRefused() {
        assertThat(faults("cone: {from: 40, to: 20}, length: 1")).containsExactly("outside[1].cone CONE_TOO_STEEP");
    }

    @Test
    void cone_pastItsPoint_isRefused() {
        assertThat(faults("cone: {from: 10, taper: 1 in 2}, length: 30"))
                .containsExactly("outside[1].cone.taper UNREADABLE");
    }

    @Test
    void polygon_withTwoSides_isRefused() {
        assertThat(faults("flats: {sides: 2, across: 20}, length: 30"))
                .containsExactly("outside[1].flats SIDES_OUT_OF_RANGE");
    }

    @Test
    void corners_withinTheFlats_areRefused() {
        assertThat(faults("hexagon: 20, corners: 20, length: 30"))
                .containsExactly("outside[1].hexagon CORNERS_WITHIN_FLATS");
    }

    @Test
    void corners_beyondSharpOnes_areRefused() {
        assertThat(faults("square: 20, corners: 28.3, length: 30"))
                .containsExactly("outside[1].square CORNERS_BEYOND_SHARP");
    }

    @Test
    void thread_ofLessThanATurn_isRefused() {
        assertThat(faults("thread: M20, length: 2")).containsExactly("outside[1].length THREAD_TOO_SHORT");
    }

    @Test
    void edges_longerThanTheirSection_areRefused() {
        assertThat(faults("round: 20, length: 3, at-a: chamfer 2, at-b: radius 1.5"))
                .containsExactly("outside[1] EDGE_LONGER_THAN_SECTION");
    }

    @Test
    void chamfer_squareToTheAxis_isRefused() {
        assertThat(faults("round: 20, length: 30, at-a: chamfer 1 x 90°"))
                .containsExactly("outside[1].at-a EDGE_ANGLE");
    }

    @Test
    void names_ofTwoFeatures_mustDiffer() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 20, length: 30, name: journal")
                        .inside("drill: 5, name: journal")))
                .containsExactly("inside[1].name NAME_TWICE");
    }

    @Test
    void sections_moreThanAPartHas_areRefused() {
        var text = PartText.mm();
        for (int i = 0; i < 101; i++) {
            text.outside("round: " + (20 + i % 2) + ", length: 3");
        }
        assertThat(FaultsOf.of(text)).containsExactly("outside TOO_MANY_FEATURES");
    }

    @Test
    void everyFault_isToldAtOnce() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside(
                                "round: 0, length: 30",
                                "round: 20 H7, length: 10",
                                "hexagon: 20, corners: 19, length: 5")
                        .inside("drill: 5 h7")))
                .contains(
                        "outside[1].round SIZE_TOO_SMALL",
                        "outside[2].round LETTERS_OF_OTHER_KIND",
                        "outside[3].hexagon CORNERS_WITHIN_FLATS",
                        "inside[1].drill LETTERS_OF_OTHER_KIND");
    }
}
