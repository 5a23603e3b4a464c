package chargehand.trade.screwcutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.LengthUnit;
import chargehand.measure.Pitch;
import chargehand.trade.PublishedRow;
import chargehand.trade.Tree;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ChasingDialSumTest {
    private static Outcome ask(Map<String, String> ask) {
        return Asking.ask(new ChasingDialSum(), ask, LengthUnit.INCH);
    }

    private static Map<String, Object> answer(Map<String, String> ask) {
        return FigureTree.of(((Outcome.Answered) ask(ask)).answer().figures());
    }

    private static Map<String, Object> answer(String tpi, int teeth, int marks) {
        return answer(Map.of(
                "tpi",
                tpi,
                "leadscrew",
                "8 tpi",
                "dialTeeth",
                String.valueOf(teeth),
                "dialMarks",
                String.valueOf(marks)));
    }

    /** For 6 threads to the inch the manual prints 4.8; by its own rule, and for 10, 14, 18 and 22, it is 2.4.6.8. */
    @TestFactory
    Stream<DynamicTest> manualTable_sixteenTeethEightMarks() {
        return PublishedRow.of("change-wheels.json", "thread_dial").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Map<String, Object> answer = answer(row.text("tpi"), 16, 8);
                    assertThat(asPrinted(Tree.at(answer, "engageAt"))).isEqualTo(row.wantText("engage"));
                    assertThat(Tree.number(answer, "repeat", "in"))
                            .isCloseTo(row.want("repeat_distance_in"), within(1e-6));
                }));
    }

    private static String asPrinted(Object engageAt) {
        if (!(engageAt instanceof List<?> marks)) {
            return engageAt.toString();
        }
        return marks.size() == 8 ? "1-8" : marks.stream().map(Object::toString).collect(Collectors.joining("."));
    }

    @TestFactory
    Stream<DynamicTest> manualTable_fourInchesToATurn() {
        return PublishedRow.of("change-wheels.json", "thread_dial_32T").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Map<String, Object> answer = answer(row.text("tpi"), 32, 8);
                    assertThat(Tree.number(answer, "repeat", "in"))
                            .isCloseTo(row.want("repeat_distance_in"), within(1e-6));
                    assertThat(marksFrom(answer)).as(row.wantText("engage")).isEqualTo(marks(row.wantText("engage")));
                }));
    }

    private static int marksFrom(Map<String, Object> answer) {
        return Tree.at(answer, "engageAt") instanceof List<?> marks ? marks.size() : 0;
    }

    /** How many of the dial's eight lines the printed words allow. */
    private static int marks(String printed) {
        return switch (printed) {
            case "any position", "non-numbered (i.e. every 1/2 in)" -> 8;
            case "numbered 1-4" -> 4;
            case "1,3 or 2,4" -> 2;
            case "1 only" -> 1;
            default -> 0;
        };
    }

    @Test
    void metricOnImperial_keepsTheNutClosed() {
        Map<String, Object> answer =
                answer(Map.of("pitch", "1.5 mm", "leadscrew", "8 tpi", "dialTeeth", "16", "dialMarks", "8"));

        assertThat(answer).containsEntry("engageAt", "keep the nut closed");
    }

    @Test
    void metricOnMetric_closesAtMarks() {
        Map<String, Object> answer =
                answer(Map.of("pitch", "M12", "leadscrew", "3 mm", "dialTeeth", "28", "dialMarks", "4"));

        // 1.75 mm on 3 mm: together every 21 mm, seven threads; the dial comes round in 28.
        assertThat(Tree.at(answer, "engageAt")).isEqualTo(List.of(1L, 2L, 3L, 4L));
        assertThat(Tree.number(answer, "repeat", "mm")).isEqualTo(21);
    }

    @Test
    void bothOrNeither_isRefused() {
        Map<String, String> dial = Map.of("leadscrew", "8 tpi", "dialTeeth", "16", "dialMarks", "8");
        assertThat(ask(dial))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("tpi"));
    }

    /** Second method: run the carriage mark by mark for many turns of the dial and see where the groove is always met. */
    @Test
    void closing_againstRunningTheCarriage() {
        var random = new Random(19);
        for (int i = 0; i < 300; i++) {
            int teeth = 8 + random.nextInt(40);
            int marks = 1 + random.nextInt(12);
            Pitch leadscrew = random.nextBoolean()
                    ? Pitch.ofTpi(2 + random.nextInt(10))
                    : Pitch.ofMm("" + (1 + random.nextInt(6)));
            Pitch lead = random.nextBoolean()
                    ? Pitch.ofTpi(2 + random.nextInt(40))
                    : Pitch.ofMm("0." + (1 + random.nextInt(99)));
            var dial = new ChasingDial(leadscrew, teeth, marks);

            List<Integer> met = IntStream.rangeClosed(1, marks)
                    .filter(mark -> alwaysMet(dial, lead, mark))
                    .boxed()
                    .toList();
            List<Integer> said = switch (dial.closing(lead)) {
                case ChasingDial.Closing.Anywhere anywhere ->
                    IntStream.rangeClosed(1, marks)
                            .filter(mark -> mark * teeth % marks == 0)
                            .boxed()
                            .toList();
                case ChasingDial.Closing.AtMarks(var at) -> at;
                case ChasingDial.Closing.KeepClosed closed -> List.of();
            };
            assertThat(said).as("%s %s", dial, lead).isEqualTo(met);
        }
    }

    /** In each of sixty turns of the dial the mark stands on a leadscrew thread that is a whole number of leads away. */
    private static boolean alwaysMet(ChasingDial dial, Pitch lead, int mark) {
        if (mark * dial.teeth() % dial.marks() != 0) {
            return false;
        }
        for (int turn = 0; turn < 60; turn++) {
            int threads = mark * dial.teeth() / dial.marks() + turn * dial.teeth();
            if (dial.leadscrew()
                            .mm()
                            .multiply(threads)
                            .divide(lead.mm())
                            .getDenominator()
                            .intValue()
                    != 1) {
                return false;
            }
        }
        return true;
    }
}
