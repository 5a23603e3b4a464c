package chargehand.trade.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.trade.PublishedRow;
import chargehand.trade.Tree;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import chargehand.trade.thread.ScrewThread;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OverWiresSumTest {
    private static Outcome ask(Map<String, String> ask) {
        return Asking.ask(new OverWiresSum(), ask, LengthUnit.MILLIMETRE);
    }

    private static Map<String, Object> answer(Map<String, String> ask) {
        return FigureTree.of(((Outcome.Answered) ask(ask)).answer().figures());
    }

    private static Stream<DynamicTest> rows(String kind, Consumer<PublishedRow> check) {
        return PublishedRow.of("threads.json", kind).stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> check.accept(row)));
    }

    /** The worked example takes U.S. Standard form, whose effective diameter is the Unified one. */
    @TestFactory
    Stream<DynamicTest> threeWires_workedExample() {
        return rows("three_wire", row -> {
            String thread = row.text("D") + "-" + row.text("tpi") + " UN";
            Map<String, Object> answer = answer(Map.of("thread", thread, "wire", row.text("wire") + " in"));
            assertThat(Tree.number(answer, "over", "in")).isCloseTo(row.want("M"), row.within("M"));
        });
    }

    @TestFactory
    Stream<DynamicTest> metric_bestWireAndOver() {
        return rows("three_wire_metric", row -> bestWire(row, row.text("thread"), "mm"));
    }

    @TestFactory
    Stream<DynamicTest> whitworth_bestWireAndOver() {
        return rows("three_wire_whitworth", row -> {
            String[] words = row.text("thread").split(" ", 2);
            bestWire(row, words[0] + " BSW", "in");
        });
    }

    private static void bestWire(PublishedRow row, String thread, String unit) {
        Map<String, Object> answer = answer(Map.of("thread", thread));
        assertThat(Tree.number(answer, "bestWire", unit)).isCloseTo(row.want("best_wire"), row.within("best_wire"));
        assertThat(Tree.number(answer, "over", unit)).isCloseTo(row.want("M_best"), row.within("M_best"));
    }

    @TestFactory
    Stream<DynamicTest> pipe_bestWire() {
        return rows(
                "bsp",
                row -> assertThat(Tree.number(answer(Map.of("thread", row.text("thread"))), "bestWire", "in"))
                        .isCloseTo(row.want("best_wire"), row.within("best_wire")));
    }

    /** The printed formulas start from the major diameter: so much pitch is taken off it, so many wires put on. */
    @TestFactory
    Stream<DynamicTest> printedFactors() {
        return rows("three_wire_const", row -> {
            boolean whitworth = row.text("form").equals("Whitworth");
            ScrewThread thread = ScrewThread.parse(whitworth ? "1 BSW" : "M20x1");
            var wires = new ThreeWires(thread);
            assertThat(wires.factor()).isCloseTo(row.want("k_wire"), row.within("k_wire"));
            // A sharp V is as much deeper on diameter as its triangle is high; the rounded form is as deep as it is.
            Length drop = whitworth
                    ? thread.profile().effectiveDrop()
                    : thread.profile().triangle();
            double pitches = drop.plus(wires.groove()).over(thread.pitch().length());
            assertThat(pitches).isCloseTo(row.want("k_pitch"), row.within("k_pitch"));
        });
    }

    @TestFactory
    Stream<DynamicTest> sixtyDegreeFactors() {
        return rows("wire_factors", row -> {
            var wires = new ThreeWires(ScrewThread.parse("M20x1"));
            assertThat(wires.best().mm()).isCloseTo(row.want("best_over_p"), row.within("best_over_p"));
            assertThat(wires.factor()).isCloseTo(row.want("wire_factor"), row.within("wire_factor"));
            assertThat(wires.groove().mm()).isCloseTo(row.want("pitch_factor"), row.within("pitch_factor"));
        });
    }

    @TestFactory
    Stream<DynamicTest> wireLimits_asPrinted() {
        return rows("wire_limits", row -> {
            Map<String, Object> answer = answer(Map.of("thread", "1-" + row.text("tpi") + " UN"));
            assertThat(Tree.number(answer, "wireMin", "in")).isCloseTo(row.want("min"), row.within("min"));
            assertThat(Tree.number(answer, "wireMax", "in")).isCloseTo(row.want("max"), row.within("max"));
            assertThat(Tree.number(answer, "bestWire", "in")).isCloseTo(row.want("best"), row.within("best"));
        });
    }

    /** A reading over two wires, set by a plain standard: the same constant, the reading being standard plus difference. */
    @TestFactory
    Stream<DynamicTest> twoWires_setByAStandard() {
        return rows("two_wire_gate", row -> {
            var wires = new ThreeWires(ScrewThread.parse("M33x" + row.text("pitch")));
            double over = row.number("standard_d") + (row.number("Rw") - row.number("Rs")) + 2 * row.number("wire");
            Length effective = wires.effective(Length.mm(over), Length.mm(row.number("wire")));
            assertThat(effective.mm()).isCloseTo(row.want("E_mm"), within(0.001));
        });
    }

    /** From memory of Machinery's Handbook: Acme wires from 0.48726 p to 0.65001 p, best 0.51645 p. */
    @Test
    void acme_wires_asRemembered() {
        var wires = new ThreeWires(ScrewThread.parse("1-5 Acme"));

        assertThat(wires.smallest().in() * 5).isCloseTo(0.48726, within(0.00001));
        assertThat(wires.largest().in() * 5).isCloseTo(0.65001, within(0.00001));
        assertThat(wires.best().in() * 5).isCloseTo(0.51645, within(0.00001));
    }

    @ParameterizedTest
    @ValueSource(strings = {"M12", "1/2 BSW", "G 1/2", "2 BA", "Tr 30x6", "1/2-10 Acme", "1/2-26 CEI", "1/2-13 UNC"})
    void bestWire_liesBetweenSmallestAndLargest(String thread) {
        var wires = new ThreeWires(ScrewThread.parse(thread));

        assertThat(wires.smallest()).isLessThan(wires.best());
        assertThat(wires.best()).isLessThan(wires.largest());
    }

    /** Second method: a wire of the best size touches where the groove is half a pitch wide, at the effective diameter. */
    @ParameterizedTest
    @ValueSource(strings = {"M12", "1/2 BSW", "2 BA", "Tr 30x6"})
    void bestWire_centreStandsByTheGeometryOfItsTangents(String written) {
        ScrewThread thread = ScrewThread.parse(written);
        var wires = new ThreeWires(thread);
        double half = thread.form().includedAngle().half().inRadians();
        double radius = wires.best().mm() / 2;
        // The touching point lies on the effective line, the centre above it by r sin α, the top by r more; both sides.
        double over = thread.effective().mm() + 2 * (radius * Math.sin(half) + radius);

        assertThat(wires.over(wires.best()).mm()).isCloseTo(over, within(0.00001));
    }

    @Test
    void reading_givesBackTheEffectiveDiameter() {
        Map<String, Object> answer = answer(Map.of("thread", "M20", "wire", "1.5 mm", "reading", "20.7111"));

        assertThat(Tree.number(answer, "effective", "mm")).isCloseTo(18.3762, within(0.0001));
        assertThat(Tree.number(answer, "off", "mm")).isCloseTo(0, within(0.0001));
    }

    @Test
    void limits_areThoseOfTheEffectiveDiameterPlusTheConstant() {
        Map<String, Object> answer = answer(Map.of("thread", "M20"));

        double constant = Tree.number(answer, "wireConstant", "mm");
        assertThat(Tree.number(answer, "overMax", "mm") - constant).isCloseTo(18.334, within(0.0006));
        assertThat(Tree.number(answer, "overMin", "mm") - constant).isCloseTo(18.164, within(0.0006));
    }

    @Test
    void rake_growsWithTheLead() {
        double one = Tree.number(answer(Map.of("thread", "Tr 40x7")), "rake", "mm");
        double two = Tree.number(answer(Map.of("thread", "Tr 40x14 (P7)")), "rake", "mm");

        assertThat(one).isPositive();
        assertThat(two).isGreaterThan(3 * one);
    }

    @ParameterizedTest
    @CsvSource({"1-4 square, '', thread", "M12, 3 mm, wire", "M12, 0.5 mm, wire"})
    void unsuitable_isRefusedByItsField(String thread, String wire, String field) {
        assertThat(ask(Map.of("thread", thread, "wire", wire)))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo(field));
    }

    /** An effective diameter lies between the minor and the major one, or something was misread. */
    @ParameterizedTest
    @ValueSource(strings = {"18 mm", "25 mm", "900 m"})
    void reading_ofAnotherThread_isRefused(String reading) {
        assertThat(ask(Map.of("thread", "M20", "wire", "1.5 mm", "reading", reading)))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.field()).isEqualTo("reading"));
    }
}
