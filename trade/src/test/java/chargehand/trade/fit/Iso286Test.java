package chargehand.trade.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that limits and fits obey at every size, and what is refused. */
class Iso286Test {
    private static final int CASES = 300;
    private static final double LARGEST_MM = 500;

    private final Random random = new Random(286);

    private Length anySize() {
        return Length.mm(3.001 + random.nextDouble() * (LARGEST_MM - 3.001));
    }

    @ParameterizedTest
    @ValueSource(strings = {"k", "m", "n"})
    void holeBasisAndShaftBasis_transitionLetters_areEquallyTight(String letter) {
        for (int i = 0; i < CASES; i++) {
            assertSymmetric(anySize(), letter, 7);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"p", "r", "s", "u", "x", "z", "za", "zb", "zc"})
    void holeBasisAndShaftBasis_interferenceLetters_areEquallyTight(String letter) {
        for (int i = 0; i < CASES; i++) {
            assertSymmetric(anySize(), letter, 7);
        }
    }

    /** H7/p6 and P7/h6 leave the same most and least clearance: the reason for Δ. */
    private static void assertSymmetric(Length size, String letter, int holeGrade) {
        var onHole = new Fit(Iso286.limits(size, "H" + holeGrade), Iso286.limits(size, letter + (holeGrade - 1)));
        var onShaft = new Fit(
                zone(size, new ToleranceClass(true, letter, holeGrade)), Iso286.limits(size, "h" + (holeGrade - 1)));
        assertThat(onShaft.clearanceMin()).as("%s %s", letter, size).isEqualTo(onHole.clearanceMin());
        assertThat(onShaft.clearanceMax()).as("%s %s", letter, size).isEqualTo(onHole.clearanceMax());
    }

    private static ToleranceZone zone(Length size, ToleranceClass wanted) {
        return Iso286.limits(size, wanted, new Working());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "b", "c", "d", "e", "f", "g", "h"})
    void clearanceLetters_holeAndShaft_mirrorEachOther(String letter) {
        for (int i = 0; i < CASES; i++) {
            Length size = anySize();
            ToleranceZone hole = zone(size, new ToleranceClass(true, letter, 9));
            ToleranceZone shaft = zone(size, new ToleranceClass(false, letter, 9));
            assertThat(hole.lower()).isEqualTo(shaft.upper().negated());
            assertThat(hole.upper()).isEqualTo(shaft.lower().negated());
        }
    }

    @Test
    void letters_inOrder_riseSteadilyThroughTheSize() {
        List<String> order = List.of(
                "c", "d", "e", "f", "g", "h", "js", "k", "m", "n", "p", "r", "s", "u", "x", "z", "za", "zb", "zc");
        for (int i = 0; i < CASES; i++) {
            Length size = anySize();
            for (int at = 1; at < order.size(); at++) {
                Length before = Iso286.limits(size, order.get(at - 1) + "6").upper();
                Length after = Iso286.limits(size, order.get(at) + "6").upper();
                assertThat(after).as("%s at %s", order.get(at), size).isGreaterThan(before);
            }
        }
    }

    @Test
    void grades_coarser_areWider() {
        for (int i = 0; i < CASES; i++) {
            Length size = anySize();
            for (int grade = ToleranceClass.GRADE_01; grade < 18; grade++) {
                assertThat(StandardTolerances.of(size, grade + 1)).isGreaterThan(StandardTolerances.of(size, grade));
            }
        }
    }

    @Test
    void grades_fromSix_growByTheStandardsFiveStepRule() {
        // ISO 286-1:2010 annex: every fifth grade is ten times as wide before rounding.
        for (int i = 0; i < CASES; i++) {
            Length size = anySize();
            for (int grade = 6; grade <= 13; grade++) {
                double ratio = StandardTolerances.of(size, grade + 5).over(StandardTolerances.of(size, grade));
                assertThat(ratio).as("IT%d at %s", grade, size).isBetween(9.3, 10.5);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"50, 25", "50.001, 30", "18, 18", "18.001, 21", "500, 63", "500.001, 70", "3150, 210"})
    void range_upperBound_isIncluded(double mm, double microns) {
        assertThat(Iso286.limits(Length.mm(mm), "H7").upper()).isEqualTo(Microns.of(microns));
    }

    @ParameterizedTest
    @CsvSource({
        "280, M6, -9, -41", // the one figure outside the rule (ISO 286-1:2010 Table 3, from memory)
        "100, A11, 600, 380",
        "20, J7, 12, -9",
        "20, j6, 9, -4",
        "2, K9, 0, -25",
        "600, N7, -44, -114",
        "20, N9, 0, -52",
        "340, A13, 2090, 1200", // ISO 286-2:1988 Cor 1:2006 puts +2090 for a misprinted +2000
        "25, R10, -28, -112", // the same corrigendum: −28 for a misprinted −10
    })
    void hole_particularClasses_areAsTabled(double mm, String toleranceClass, double upper, double lower) {
        ToleranceZone zone = Iso286.limits(Length.mm(mm), toleranceClass);
        assertThat(zone.upper()).isEqualTo(Microns.of(upper));
        assertThat(zone.lower()).isEqualTo(Microns.of(lower));
    }

    @ParameterizedTest
    @CsvSource({
        "100, e8, -72, -126",
        "300, f9, -56, -186", // ISO 286-2:1988 Cor 1:2006 puts −186 for a misprinted −185
        "20, k8, 33, 0",
        "20, k3, 4, 0",
    })
    void shaft_particularClasses_areAsTabled(double mm, String toleranceClass, double upper, double lower) {
        ToleranceZone zone = Iso286.limits(Length.mm(mm), toleranceClass);
        assertThat(zone.upper()).isEqualTo(Microns.of(upper));
        assertThat(zone.lower()).isEqualTo(Microns.of(lower));
    }

    @ParameterizedTest
    @CsvSource({
        "20, H19, grades run from 01 to 18",
        "20, Q7, does not use the letter Q",
        "20, 7H, a letter and a grade are wanted",
        "20, j9, gives no j9",
        "20, T7, gives no T7",
        "600, v6, gives no v6",
        "3151, H7, ends at 3150 mm",
        "0, H7, more than nothing",
        "0.8, H14, not used for sizes up to 1 mm",
        "600, H0, not given above 500 mm",
        "1, B11, gives no B11",
        "25, K9, gives no K9",
    })
    void limits_notInTheStandard_areRefusedInPlainWords(double mm, String toleranceClass, String because) {
        assertThatThrownBy(() -> Iso286.limits(Length.mm(mm), toleranceClass))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining(because);
    }

    @Test
    void parse_writtenClass_comesBackTheSame() {
        for (String written : List.of("H7", "g6", "js6", "JS7", "ZA8", "zc11", "h01", "H0", "cd9")) {
            assertThat(ToleranceClass.parse(written)).hasToString(written);
        }
        assertThat(ToleranceClass.parse(" Js 7 ")).hasToString("JS7");
    }

    @Test
    void limits_withWorking_showGradeDeviationAndResult() {
        var working = new Working();
        Iso286.limits(Length.mm(25), ToleranceClass.parse("P7"), working);

        assertThat(working.steps())
                .extracting(step -> step.result())
                .containsExactly("IT7 = 21 µm", "-14 µm", "-35 µm");
    }
}
