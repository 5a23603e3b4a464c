package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Sums;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** The answer of a sum asked as one line of JSON, as the {@code sums} command does it: text in, text out. */
final class Reply {
    private static final Sums SUMS = Sums.load();

    private final Map<String, Object> answer;
    private final String cautions;

    private Reply(Map<String, Object> tree) {
        answer = map(tree.get("answer"));
        cautions = String.valueOf(tree.get("cautions"));
    }

    static Reply to(String sum, Map<String, Object> ask) {
        try {
            String line = JSON.std.asString(Map.of("id", 1, "sum", sum, "ask", ask));
            String said = JSON.std.asString(SUMS.answer(JSON.std.mapFrom(line), LengthUnit.MILLIMETRE));
            Map<String, Object> tree = JSON.std.mapFrom(said);
            assertThat(tree).as(line + " -> " + tree.get("error")).containsKey("answer");
            return new Reply(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked") // a JSON object has text keys
    private static Map<String, Object> map(Object tree) {
        return (Map<String, Object>) tree;
    }

    /** What stands at a path of names and places in lists, parted by points. */
    Object at(String path) {
        Object tree = answer;
        for (String name : path.split("\\.", -1)) {
            if (tree instanceof List<?> list) {
                tree = list.get(Integer.parseInt(name));
            } else {
                assertThat(map(tree)).as(path).containsKey(name);
                tree = map(tree).get(name);
            }
        }
        return tree;
    }

    /** All that is cautioned of, as one text. */
    String cautions() {
        return cautions;
    }

    boolean has(String name) {
        return answer.containsKey(name);
    }

    double number(String path) {
        return ((Number) at(path)).doubleValue();
    }

    /** The objects of a list. */
    List<Map<String, Object>> list(String path) {
        return ((List<?>) at(path)).stream().map(Reply::map).toList();
    }
}
