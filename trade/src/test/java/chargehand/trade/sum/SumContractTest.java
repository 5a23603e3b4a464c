package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.LengthUnit;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What every sum keeps to, whoever declared it: the promises that the page, the command and the streams rely on. */
class SumContractTest {
    private static final Sums SUMS = Sums.load();

    @TestFactory
    Stream<DynamicContainer> everySum() {
        assertThat(SUMS.list()).isNotEmpty();
        return SUMS.list().stream().map(sum -> DynamicContainer.dynamicContainer(sum.name(), tests(sum)));
    }

    private static Stream<DynamicTest> tests(Sum sum) {
        Stream<DynamicTest> declared = Stream.of(
                DynamicTest.dynamicTest("is declared in words", () -> declaredInWords(sum)),
                DynamicTest.dynamicTest(
                        "shows an example", () -> assertThat(sum.examples()).isNotEmpty()));
        return Stream.concat(
                declared,
                sum.examples().stream()
                        .map(example -> DynamicTest.dynamicTest(example.about(), () -> exampleHolds(sum, example))));
    }

    private static void declaredInWords(Sum sum) {
        assertThat(sum.name()).matches("[a-z]+(-[a-z]+)*");
        assertThat(sum.title()).isNotBlank();
        assertThat(sum.purpose()).endsWith(".");
        var names = new HashSet<String>();
        for (Field<?> field : sum.fields()) {
            assertThat(field.label()).as(field.name()).isNotBlank();
            assertThat(field.hint()).as(field.name()).isNotBlank();
            assertThat(field.kind().name()).as(field.name()).isNotBlank();
            assertThat(names.add(field.name()))
                    .as(field.name() + " is declared once")
                    .isTrue();
        }
        var results = new HashSet<String>();
        for (Result result : sum.results()) {
            assertThat(result.label()).as(result.name()).isNotBlank();
            assertThat(results.add(result.name()))
                    .as(result.name() + " is declared once")
                    .isTrue();
        }
    }

    private static void exampleHolds(Sum sum, Example example) throws IOException {
        Outcome outcome = Asking.strictly(sum, example.ask(), LengthUnit.MILLIMETRE);
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        var answered = (Outcome.Answered) outcome;
        keysAreAsDeclared(sum, answered);
        workingIsComplete(answered);
        survivesJson(sum, example);
        readsWell(answered);
    }

    private static void keysAreAsDeclared(Sum sum, Outcome.Answered answered) {
        List<String> declared = sum.results().stream().map(Result::name).toList();
        List<String> always =
                sum.results().stream().filter(Result::always).map(Result::name).toList();
        assertThat(declared).containsAll(answered.answer().figures().keySet());
        assertThat(answered.answer().figures().keySet()).containsAll(always);
    }

    private static void workingIsComplete(Outcome.Answered answered) {
        assertThat(answered.working()).isNotEmpty();
        for (Step step : answered.working()) {
            assertThat(step.say()).isNotBlank();
            assertThat(step.result()).as(step.say()).isNotBlank();
            assertThat(step.source().text()).as(step.say()).isNotBlank();
            assertThat(step.formula().isEmpty())
                    .as(step.say() + ": a formula comes with its numbers")
                    .isEqualTo(step.numbers().isEmpty());
        }
        answered.cautions().forEach(caution -> assertThat(caution).endsWith("."));
    }

    private static void survivesJson(Sum sum, Example example) throws IOException {
        Map<String, Object> line = Map.of("id", 7, "sum", sum.name(), "ask", example.ask());
        Map<String, Object> tree = SUMS.answer(line);
        assertThat(tree).containsEntry("id", 7).containsEntry("sum", sum.name()).containsKey("answer");
        String json = JSON.std.asString(tree);
        assertThat(json).doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(plain(JSON.std.mapFrom(json))).isEqualTo(plain(tree));
    }

    /** Whole numbers come back from JSON in the smallest type that holds them. */
    private static Object plain(Object tree) {
        return switch (tree) {
            case Map<?, ?> map -> {
                var copy = new LinkedHashMap<Object, Object>();
                map.forEach((key, value) -> copy.put(key, plain(value)));
                yield copy;
            }
            case List<?> list -> {
                var copy = new ArrayList<Object>();
                list.forEach(entry -> copy.add(plain(entry)));
                yield copy;
            }
            case Number number -> number.doubleValue();
            default -> tree;
        };
    }

    private static void readsWell(Outcome.Answered answered) {
        for (LengthUnit unit : LengthUnit.values()) {
            List<String> lines = OutcomeText.lines(answered, unit);
            assertThat(lines).hasSizeGreaterThan(4);
            assertThat(String.join("\n", lines))
                    .doesNotContain("NaN")
                    .doesNotContain("null")
                    .doesNotContain("Optional");
        }
    }
}
