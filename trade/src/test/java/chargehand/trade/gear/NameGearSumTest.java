package chargehand.trade.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.measure.LengthUnit;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.Tree;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Sums;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class NameGearSumTest {
    private static final double SLACK = 0.05;

    @TestFactory
    Stream<DynamicTest> outsideAlone_namesThePitch() {
        return PublishedRow.of("gears.json", "identify_from_od").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Ask ask = Ask.of("name-gear", "teeth", row.text("teeth"), "outside", row.text("od_mm") + " mm");
                    String system = ask.text("candidates.0.system");
                    String note = String.valueOf(row.cells().get("note"));
                    String wanted = note.startsWith("DP")
                            ? note.substring(2) + " DP"
                            : "module " + note.substring("mod".length());
                    assertThat(system).isEqualTo(wanted);
                }));
    }

    /** Wheels drawn at random, read with calliper slack over two spans: the true system comes first. */
    @Test
    void simulatedWheels_areNamedByOutsideAndTwoSpans() {
        var random = new Random(20_260_301);
        int first = 0;
        int wheels = 300;
        for (int i = 0; i < wheels; i++) {
            List<WheelSystem> systems = WheelSystem.list().stream()
                    .filter(each -> each.module() >= 1 && each.often() >= 0.1)
                    .toList();
            WheelSystem system = systems.get(random.nextInt(systems.size()));
            Spur wheel = system.wheel(16 + random.nextInt(60), 0);
            if (named(wheel, random).equals(system)) {
                first++;
            }
        }
        assertThat(first).isGreaterThanOrEqualTo(wheels * 90 / 100);
    }

    private static WheelSystem named(Spur wheel, Random random) {
        int over = wheel.bestOver();
        double thin = 0.02 * wheel.module();
        var reading = new WheelReading(
                wheel.teeth(),
                wheel.outside() + random.nextGaussian() * SLACK / 2,
                List.of(
                        new WheelReading.Span(over, wheel.span(over) - thin + random.nextGaussian() * SLACK / 2),
                        new WheelReading.Span(
                                over + 1, wheel.span(over + 1) - thin + random.nextGaussian() * SLACK / 2)),
                SLACK);
        return new WheelNaming(reading).candidates().getFirst().system();
    }

    @Test
    void shiftedPinion_isSuspected() {
        Spur pinion =
                new Spur(12, 2, Angle.degrees(20), WheelSystem.list().getFirst().teeth(), 0.5);
        Ask ask = Ask.of(
                "name-gear",
                "teeth",
                "12",
                "outside",
                String.valueOf(pinion.outside()),
                "span",
                "2:" + (pinion.span(2) - 0.04) + "; 3:" + (pinion.span(3) - 0.04));

        assertThat(ask.text("candidates.0.system")).isEqualTo("module 2");
        assertThat(ask.number("candidates.0.shift")).isCloseTo(0.5, within(0.05));
    }

    @Test
    void probabilities_addUpToOneAtMost_andFall() {
        Ask ask = Ask.of("name-gear", "teeth", "40", "outside", "106.6 mm", "slack", "0.3 mm");
        double total = 0;
        double before = 1;
        for (int i = 0; i < ask.many("candidates").size(); i++) {
            double probability = ask.number("candidates." + i + ".probability");
            assertThat(probability).isLessThanOrEqualTo(before);
            before = probability;
            total += probability;
        }
        assertThat(total).isBetween(0.9, 1 + 1e-9);
    }

    @Test
    void scatter_independentReadings_areTheNormalCurve() {
        var scatter = new Scatter(new double[][] {{4, 0}, {0, 0.25}});

        assertThat(scatter.misfit(new double[] {2, 1})).isCloseTo(1 + 4, within(1e-12));
        assertThat(scatter.logDensity(new double[] {0, 0})).isCloseTo(-Math.log(2 * 0.5), within(1e-12));
    }

    @Test
    void spanAsAnObject_isReadFromAStream() {
        var ask = Map.of("teeth", 30, "outside", "3.2 in", "span", Map.of("teeth", 3, "size", "19.68 mm"));
        Map<String, Object> tree = Sums.load().answer(Map.of("sum", "name-gear", "ask", ask), LengthUnit.MILLIMETRE);

        Object candidates = Tree.at(tree, "answer", "candidates");
        assertThat(((Map<?, ?>) ((List<?>) candidates).getFirst()).get("system"))
                .isEqualTo("10 DP");
    }

    @Test
    void nameGear_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("name-gear", "teeth", "30").isRefusedAt("outside", "needed");
        Ask.of("name-gear", "teeth", "30", "outside", "81 mm", "span", "30:20").isRefusedAt("span", "fewer teeth");
        Ask.of("name-gear", "teeth", "30", "outside", "81 mm", "span", "27.4").isRefusedAt("span", "teeth : size");
        Ask.of("name-gear", "teeth", "30", "outside", "5000 mm").isRefusedAt("outside", "no usual wheel");
        Figure first = Ask.of("name-gear", "teeth", "30", "outside", "81.28 mm").figure("candidates.0.outsideOff");
        assertThat(first).isInstanceOf(Figure.OfLength.class);
    }
}
