package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about holes and keyways across the axis. */
final class AcrossFaultsTest {
    private static PartText bar() {
        return PartText.mm().outside("round: 30, length: 40", "round: 20, length: 40");
    }

    private static List<String> faults(String... features) {
        return FaultsOf.of(bar().across(features));
    }

    @Test
    void hole_offTheEnd_isRefused() {
        assertThat(faults("hole: 6, at: 82")).containsExactly("across[1].at ACROSS_OFF_PART");
        assertThat(faults("hole: 6, at: 3.2")).containsExactly("across[1].at ACROSS_OFF_PART");
    }

    @Test
    void hole_asWideAsThePart_isRefused() {
        assertThat(faults("hole: 19.5, at: 60")).containsExactly("across[1].hole ACROSS_TOO_WIDE");
    }

    @Test
    void hole_onTheCornerOfTwoSections_isRemarkedOn() {
        assertThat(FaultsOf.remarks(bar().across("hole: 6, at: 41"))).containsExactly("across[1].at HOLE_ON_CORNER");
    }

    @Test
    void blindHole_nearlyThrough_isRefused() {
        assertThat(faults("hole: 6, at: 60, depth: 18")).containsExactly("across[1].depth ACROSS_TOO_DEEP");
        assertThat(faults("hole: 6, at: 60, depth: 17")).isEmpty();
    }

    @Test
    void blindHole_endingJustAboveTheBore_isRefused() {
        assertThat(FaultsOf.of(bar().inside("drill: 6").across("hole: 4, at: 60, depth: 6")))
                .containsExactly("across[1].depth WALL_TOO_THIN");
    }

    @Test
    void blindHole_intoTheBore_stands() {
        assertThat(FaultsOf.of(bar().inside("drill: 6").across("hole: 4, at: 60, depth: 8")))
                .isEmpty();
    }

    @Test
    void greaseDrilling_endingJustShortOfTheCrossHole_isRefused() {
        assertThat(FaultsOf.of(bar().inside("bore: 5, from: A, depth: 57.8").across("hole: 4, at: 60")))
                .containsExactly("across[1].at WALL_TOO_THIN");
        assertThat(FaultsOf.of(bar().inside("bore: 5, from: A, depth: 60").across("hole: 4, at: 60")))
                .isEmpty();
    }

    @Test
    void holes_atTheSamePlace_areRefused() {
        assertThat(faults("hole: 6, at: 60", "hole: 4, at: 63, around: 180°"))
                .containsExactly("across[2].hole ACROSS_OVERLAP");
    }

    @Test
    void holes_squareToEachOther_stand() {
        assertThat(faults("hole: 6, at: 60", "hole: 6, at: 60, around: 90°")).isEmpty();
    }

    @Test
    void keyway_beyondTheEnd_isRefused() {
        assertThat(faults("keyway: 6 P9, depth: 3, at: 60, length: 30"))
                .containsExactly("across[1].length ACROSS_OFF_PART");
    }

    @Test
    void keyway_acrossAShoulder_isRefused() {
        assertThat(faults("keyway: 6 P9, depth: 3, at: 30, length: 20"))
                .containsExactly("across[1].at KEYWAY_OFF_SECTION");
    }

    @Test
    void keyway_onAHexagon_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("hexagon: 30, length: 40")
                        .across("keyway: 6 P9, depth: 3, at: 5, length: 20")))
                .containsExactly("across[1].at KEYWAY_OFF_SECTION");
    }

    @Test
    void keyway_shorterThanWide_isRefused() {
        assertThat(faults("keyway: 6 P9, depth: 3, at: 45, length: 5"))
                .containsExactly("across[1].length KEYWAY_TOO_SHORT");
    }

    @Test
    void keyway_intoTheBore_isRefused() {
        var bored = bar().inside("bore: 14");

        assertThat(FaultsOf.of(bored.across("keyway: 6 P9, depth: 3.2, at: 45, length: 20")))
                .containsExactly("across[1].depth BREAKS_THROUGH");
    }

    @Test
    void keyway_nearlyIntoTheBore_isRefused() {
        assertThat(FaultsOf.of(bar().inside("bore: 14").across("keyway: 6 P9, depth: 2.8, at: 45, length: 20")))
                .containsExactly("across[1].depth WALL_TOO_THIN");
    }

    @Test
    void keyway_asWideAsTheShaft_isRefused() {
        assertThat(faults("keyway: 20 P9, depth: 3, at: 45, length: 20"))
                .containsExactly("across[1].keyway ACROSS_TOO_WIDE");
    }

    @Test
    void keyway_underACrossHole_isRefused() {
        assertThat(faults("keyway: 6 P9, depth: 3, at: 45, length: 20", "hole: 4, at: 55"))
                .containsExactly("across[2].hole ACROSS_OVERLAP");
    }

    @Test
    void flat_withAHoleDrilledInIt_stands() {
        assertThat(faults("flat: 2, at: 50, length: 20", "hole: 6, at: 60, depth: 8"))
                .isEmpty();
        assertThat(faults("over-flat: 18, at: 50, length: 30")).isEmpty();
    }

    @Test
    void flat_acrossAShoulder_isRefused() {
        assertThat(faults("flat: 2, at: 30, length: 20")).containsExactly("across[1].at FLAT_OFF_SECTION");
    }

    @Test
    void flat_beyondTheEnd_isRefused() {
        assertThat(faults("flat: 2, at: 70, length: 20")).containsExactly("across[1].length ACROSS_OFF_PART");
    }

    @Test
    void flat_thatTakesNothing_isRefused() {
        assertThat(faults("over-flat: 20, at: 50, length: 20"))
                .containsExactly("across[1].over-flat FLAT_TAKES_NOTHING");
    }

    @Test
    void flat_thatLeavesNothing_isRefused() {
        assertThat(faults("flat: 20, at: 50, length: 20")).containsExactly("across[1].flat BREAKS_THROUGH");
        assertThat(faults("over-flat: 0.4, at: 50, length: 20")).containsExactly("across[1].over-flat WALL_TOO_THIN");
    }

    @Test
    void flat_intoTheBore_isRefused() {
        assertThat(FaultsOf.of(bar().inside("bore: 14").across("flat: 3, at: 50, length: 20")))
                .containsExactly("across[1].flat BREAKS_THROUGH");
    }

    @Test
    void keyway_inAFlat_isRefused() {
        assertThat(faults("flat: 2, at: 50, length: 20", "keyway: 4 P9, depth: 2, at: 52, length: 15"))
                .containsExactly("across[2].keyway ACROSS_OVERLAP");
    }

    @Test
    void taperPin_ofAMadeSize_stands() {
        assertThat(faults("taper-pin: 6, at: 60, with: collar")).isEmpty();
    }

    @Test
    void taperPin_ofNoMadeSize_isRefused() {
        assertThat(faults("taper-pin: 7, at: 60")).containsExactly("across[1].taper-pin TAPER_PIN_SIZE");
    }

    @Test
    void taperPin_whoseLargeEndLeavesNoWall_isRefused() {
        PartText thin = PartText.mm().outside("round: 11.1, length: 40");

        assertThat(FaultsOf.of(thin.across("taper-pin: 10, at: 20")))
                .containsExactly("across[1].taper-pin ACROSS_TOO_WIDE");
        assertThat(FaultsOf.of(PartText.mm().outside("round: 11.1, length: 40").across("hole: 10, at: 20")))
                .isEmpty();
    }

    @Test
    void taperPin_offTheEnd_isRefused() {
        assertThat(faults("taper-pin: 6, at: 79")).containsExactly("across[1].at ACROSS_OFF_PART");
    }

    @Test
    void taperPin_whereAKeywayIs_isRefused() {
        assertThat(faults("keyway: 6 P9, depth: 3, at: 45, length: 20", "taper-pin: 4, at: 55"))
                .containsExactly("across[2].taper-pin ACROSS_OVERLAP");
    }

    @Test
    void slit_alongABush_stands() {
        assertThat(FaultsOf.of(bar().inside("bore: 12").across("slit: 1.5, at: 0, length: 80, walls: one")))
                .isEmpty();
    }

    @Test
    void slit_throughOneWallOfASolidPart_isRefused() {
        assertThat(faults("slit: 1.5, at: 0, length: 20, walls: one"))
                .containsExactly("across[1].walls SLIT_WITHOUT_BORE");
        assertThat(faults("slit: 1.5, at: 0, length: 20, walls: both")).isEmpty();
    }

    @Test
    void slit_beyondTheBoreItEndsIn_isRefused() {
        assertThat(FaultsOf.of(bar().inside("bore: 12, from: A, depth: 30")
                        .across("slit: 1.5, at: 0, length: 40, walls: one")))
                .containsExactly("across[1].walls SLIT_WITHOUT_BORE");
    }

    @Test
    void slit_throughBothWallsAllAlong_isRefused() {
        assertThat(faults("slit: 1.5, at: 0, length: 80, walls: both")).containsExactly("across[1].walls SLIT_PARTS");
    }

    @Test
    void slit_asWideAsThePart_isRefused() {
        assertThat(faults("slit: 20, at: 0, length: 50, walls: both"))
                .containsExactly("across[1].slit ACROSS_TOO_WIDE");
    }

    @Test
    void slit_beyondTheEnd_isRefused() {
        assertThat(faults("slit: 2, at: 70, length: 20, walls: both"))
                .containsExactly("across[1].length ACROSS_OFF_PART");
    }
}
