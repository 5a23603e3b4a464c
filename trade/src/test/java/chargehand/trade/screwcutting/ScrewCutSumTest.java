package chargehand.trade.screwcutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.trade.Tree;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadSeries;
import chargehand.trade.thread.Threads;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ScrewCutSumTest {
    private static final String ENGLISH_SET = "20,25,30,35,38,40,40,45,50,55,60,65";
    private static final Material MILD_STEEL = Materials.get("EN3B");

    private static Outcome ask(Map<String, String> ask) {
        return Asking.ask(new ScrewCutSum(), ask, LengthUnit.MILLIMETRE);
    }

    private static Map<String, Object> answer(Map<String, String> ask) {
        return FigureTree.of(((Outcome.Answered) ask(ask)).answer().figures());
    }

    @ParameterizedTest
    @EnumSource(ThreadSeries.class)
    void cuts_ofEveryListedThread_reachTheDepthInFallingSteps(ThreadSeries series) {
        for (ScrewThread thread : Threads.list(series)) {
            List<ThreadPasses.Cut> cuts = ThreadPasses.of(thread, MILD_STEEL).cuts();
            Length sum = Length.ZERO;
            for (int i = 0; i < cuts.size(); i++) {
                sum = sum.plus(cuts.get(i).step());
                assertThat(cuts.get(i).depthSoFar()).isEqualTo(sum);
                if (i > 0) {
                    assertThat(cuts.get(i).step()).isLessThan(cuts.get(i - 1).step());
                }
            }
            assertThat(sum).isEqualTo(thread.depth());
            assertThat(cuts.getFirst().step())
                    .isLessThanOrEqualTo(
                            ThreadPasses.firstCut(thread, MILD_STEEL).plus(new Length(1)));
        }
    }

    /** Equal areas: a V groove's area goes with the square of its depth, so its square grows by as much each cut. */
    @Test
    void cuts_takeEqualAreas() {
        List<ThreadPasses.Cut> cuts =
                ThreadPasses.of(ScrewThread.parse("M20"), MILD_STEEL).cuts();
        double first = Math.pow(cuts.getFirst().depthSoFar().mm(), 2);
        for (int i = 1; i < cuts.size() - 1; i++) {
            double area = Math.pow(cuts.get(i).depthSoFar().mm(), 2)
                    - Math.pow(cuts.get(i - 1).depthSoFar().mm(), 2);
            assertThat(area).isCloseTo(first, within(1e-4));
        }
    }

    @Test
    void tougherMaterial_takesMoreCutsAndRunsSlower() {
        ScrewThread thread = ScrewThread.parse("M20");

        assertThat(ThreadPasses.of(thread, Materials.get("316")).cuts().size())
                .isGreaterThan(ThreadPasses.of(thread, MILD_STEEL).cuts().size());
        assertThat(ScrewSpeed.of(thread, Materials.get("316")).bySurface())
                .isLessThan(ScrewSpeed.of(thread, MILD_STEEL).bySurface());
    }

    /** Common practice in every workshop book: 29½° for 60° threads, 27° for Whitworth, power screws straight in. */
    @ParameterizedTest
    @CsvSource({"M12, 29.5", "1/2-13 UNC, 29.5", "1/2 BSW, 27", "2 BA, 23.25", "Tr 30x6, 0", "1-4 square, 0"})
    void infeed_usual_isHalfADegreeUnderTheFlank(String thread, double degrees) {
        Map<String, Object> answer = answer(Map.of("thread", thread, "length", "30 mm"));

        assertThat(Tree.number(answer, "infeedAngle", "deg")).isCloseTo(degrees, within(1e-9));
        assertThat(Tree.number(answer, "slideTotal", "mm"))
                .isCloseTo(Tree.number(answer, "total", "mm") / Math.cos(Math.toRadians(degrees)), within(1e-5));
    }

    @Test
    void coarseLead_isHeldByTheCarriage() {
        Map<String, Object> answer = answer(Map.of("thread", "Tr 40x14 (P7)", "length", "100 mm", "material", "brass"));

        assertThat(Tree.number(answer, "rpm")).isCloseTo(300 / 14.0, within(1e-6));
    }

    /** A metric stud on an 8 to the inch leadscrew without a 127 wheel: near enough over the stud, not over a long screw. */
    @Test
    void metricOnImperial_nearEnoughOverAShortLengthOnly() {
        Map<String, Object> stud =
                answer(Map.of("thread", "M20x2.5", "length", "40 mm", "leadscrew", "8 tpi", "wheels", ENGLISH_SET));
        Map<String, Object> screw =
                answer(Map.of("thread", "M20x2.5", "length", "2000 mm", "leadscrew", "8 tpi", "wheels", ENGLISH_SET));

        assertThat(stud).containsEntry("trainNearEnough", true);
        assertThat(screw).containsEntry("trainNearEnough", false);
        assertThat(Tree.number(screw, "trainErrorOver", "mm"))
                .isCloseTo(50 * Tree.number(stud, "trainErrorOver", "mm"), within(1e-4));
        assertThat(Tree.at(screw, "advice").toString()).startsWith("Use a die");
    }

    /** 19 threads to the inch on 8 to the inch needs a 38 or 57 wheel; without one a short union is better made by die. */
    @Test
    void wheelsThatCannot_adviseADie() {
        Map<String, Object> with =
                answer(Map.of("thread", "G 3/8", "length", "12 mm", "leadscrew", "8 tpi", "wheels", ENGLISH_SET));
        Map<String, Object> without =
                answer(Map.of("thread", "G 3/8", "length", "12 mm", "leadscrew", "8 tpi", "wheels", "20,30,40,60"));

        assertThat(Tree.number(with, "trainErrorOver", "mm")).isZero();
        assertThat(without).containsEntry("trainNearEnough", false);
        assertThat(Tree.at(without, "advice").toString()).startsWith("Use a die");
    }

    @ParameterizedTest
    @CsvSource({"M8, quicker at this size", "M30, Cut it with the tool", "Tr 30x6, not made with a die"})
    void advice_bySizeAndForm(String thread, String says) {
        assertThat(Tree.at(answer(Map.of("thread", thread, "length", "30 mm")), "advice")
                        .toString())
                .contains(says);
    }

    @ParameterizedTest
    @CsvSource({"M12, 31, infeed", "Tr 30x6, 20, infeed", "M12, sideways, infeed", "M12, 60, infeed"})
    void infeed_beyondTheFlank_isRefused(String thread, String infeed, String field) {
        assertThat(ask(Map.of("thread", thread, "length", "30 mm", "infeed", infeed)))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo(field));
    }
}
