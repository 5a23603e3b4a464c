package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class SumCommandTest {
    /** 1 3/8 in is 34.925 mm, an inch being 25.4 mm (international yard and pound agreement, 1959). */
    @Test
    void sum_size_isShownInBothUnits() {
        Said said = Said.by("sum", "size", "size=1 3/8 in");
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.out()).contains("34.92", "1.375");
        assertThat(said.err()).isEmpty();
    }

    @Test
    void sum_json_isTheLineOfTheStream() {
        Said said = Said.by("sum", "size", "size=1 3/8", "--unit", "in", "--json");
        assertThat(said.lines()).hasSize(1);
        Map<String, Object> line = JsonLines.read(said.out());
        assertThat(line).containsEntry("sum", "size").containsKeys("answer", "working", "cautions");
        assertThat(said.out()).contains("\"length\":{\"mm\":34.925,\"in\":1.375}");
    }

    @Test
    void sum_refused_goesToStandardErrorAndEndsWithTwo() {
        Said said = Said.by("sum", "size", "size=a handful");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith("size: ").contains("a handful");
    }

    @Test
    void sum_refusedAsJson_isALineAndEndsWithTwo() {
        Said said = Said.by("sum", "size", "size=a handful", "--json");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(JsonLines.read(said.out()).get("error"))
                .asInstanceOf(InstanceOfAssertFactories.MAP)
                .containsEntry("field", "size")
                .containsKey("say");
    }

    @Test
    void sum_unknownName_isRefusedWithTheNames() {
        Said said = Said.by("sum", "sise", "size=1");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("There is no sum 'sise'.").contains("size");
    }

    @Test
    void sum_withoutName_isRefusedWithTheNames() {
        Said said = Said.by("sum");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("Which sum?").contains("size");
    }

    @Test
    void sum_wordWithoutEquals_isRefused() {
        Said said = Said.by("sum", "size", "1 3/8");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("'1 3/8' is not FIELD=VALUE");
    }

    @Test
    void sum_fieldTwice_isRefused() {
        Said said = Said.by("sum", "size", "size=1", "size=2");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("size is given twice.");
    }

    static Stream<Sum> everySum() {
        return Sums.load().list().stream();
    }

    @ParameterizedTest
    @MethodSource("everySum")
    void sumHelp_everySum_namesEachFieldAndResult(Sum sum) {
        Said said = Said.by("sum", sum.name(), "--help");
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.out()).startsWith(sum.name() + ": ");
        List<String> names = Stream.concat(
                        sum.fields().stream().map(Field::name),
                        sum.results().stream().map(Result::name))
                .toList();
        assertThat(names).allSatisfy(name -> assertThat(said.out()).contains("\n  " + name + " "));
    }

    @ParameterizedTest
    @MethodSource("everySum")
    void sum_everyExample_isAnswered(Sum sum) {
        assertThat(sum.examples()).isNotEmpty();
        for (Example example : sum.examples()) {
            var args = new ArrayList<>(List.of("sum", sum.name()));
            example.ask().forEach((field, value) -> args.add(field + "=" + value));
            Said said = Said.by(args.toArray(String[]::new));
            assertThat(said.ended()).as(said.err()).isEqualTo(Ended.ANSWERED);
            assertThat(said.out()).contains(sum.title());
        }
    }
}
