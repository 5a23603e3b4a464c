package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.Tree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SumsTest {
    private static final Sums SUMS = Sums.load();

    private static Object field(Map<String, ?> line) {
        return Tree.at(SUMS.answer(line), "error", "field");
    }

    @Test
    void answer_lineWithId_givesItBack() {
        Map<String, Object> tree = SUMS.answer(Map.of("id", "a-1", "sum", "size", "ask", Map.of("size", "20.6 mm")));

        assertThat(tree).containsEntry("id", "a-1").containsEntry("sum", "size");
        assertThat(tree.keySet()).containsExactly("id", "sum", "answer", "working", "cautions", "taken");
        assertThat(Tree.at(tree, "answer", "length")).isEqualTo(Map.of("mm", 20.6, "in", 20_600_000 / 25_400_000.0));
    }

    @Test
    void answer_plainNumber_isReadAsItIsWritten() {
        Map<String, Object> tree = SUMS.answer(Map.of("sum", "size", "ask", Map.of("size", 0.1, "unit", "in")));

        assertThat(Tree.at(tree, "answer", "length")).isEqualTo(Map.of("mm", 2.54, "in", 0.1));
    }

    @Test
    void answer_listOfEntries_isReadAsAList() {
        var ask = Map.of("thread", "M12", "drills", List.of("10", "10.2 mm", "letter X"));

        Map<String, Object> tree = SUMS.answer(Map.of("sum", "tapping-drill", "ask", ask));

        assertThat(Tree.at(tree, "answer", "drill")).isEqualTo("10.2 mm");
    }

    @Test
    void answer_unknownSum_namesThoseThereAre() {
        Object error = Tree.at(SUMS.answer(Map.of("sum", "thred", "ask", Map.of())), "error");

        assertThat(error).isEqualTo(Map.of("field", "sum", "say", say("thred")));
    }

    private static String say(String name) {
        return "there is no sum '" + name + "'; there are "
                + String.join(", ", SUMS.list().stream().map(Sum::name).toList()) + ".";
    }

    @Test
    void answer_nonsenseOfEveryShape_isRefusedWithItsField() {
        var nothing = new HashMap<String, Object>();
        nothing.put("sum", null);

        assertThat(field(Map.of())).isEqualTo("sum");
        assertThat(field(nothing)).isEqualTo("sum");
        assertThat(field(Map.of("sum", 3))).isEqualTo("sum");
        assertThat(field(Map.of("sum", "size", "asks", 1))).isEqualTo("asks");
        assertThat(field(Map.of("sum", "size", "ask", "20"))).isEqualTo("ask");
        assertThat(field(Map.of("sum", "size", "ask", Map.of("size", Map.of("mm", 3)))))
                .isEqualTo("size");
        assertThat(field(Map.of("sum", "size", "ask", Map.of("size", List.of(List.of(1))))))
                .isEqualTo("size");
        assertThat(field(Map.of("sum", "size", "ask", Map.of("size", Double.NaN))))
                .isEqualTo("size");
        assertThat(field(Map.of("sum", "size", "ask", Map.of("size", 1e300)))).isEqualTo("size");
        assertThat(field(Map.of("sum", "size", "ask", Map.of("sise", "3")))).isEqualTo("sise");
        assertThat(field(Map.of("sum", "size", "ask", Map.of("size", "3", "unit", "ell"))))
                .isEqualTo("unit");
        assertThat(field(Map.of("sum", "size"))).isEqualTo("size");
    }
}
