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
}
