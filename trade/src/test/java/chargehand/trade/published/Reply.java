package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Sums;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The answer of a sum asked as one line of JSON, as the {@code sums} command does it: text in, text out. */
final class Reply {
    private static final Sums SUMS = Sums.load();

    private final Map<String, Object> answer;
    private final String cautions;

    private Reply(Map<String, Object> answer, String cautions) {
        this.answer = answer;
        this.cautions = cautions;
    }

    static Reply to(String sum, Map<String, Object> ask) {
        try {
            String line = JSON.std.asString(Map.of("id", 1, "sum", sum, "ask", ask));
            String said = JSON.std.asString(SUMS.answer(JSON.std.mapFrom(line), LengthUnit.MILLIMETRE));
            Map<String, Object> tree = JSON.std.mapFrom(said);
            assertThat(tree).as(line + " -> " + tree.get("error")).containsKey("answer");
            return new Reply(map(Objects.requireNonNull(tree.get("answer"))), String.valueOf(tree.get("cautions")));
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
                tree = Objects.requireNonNull(map(tree).get(name));
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

    /** The object at a path, to be looked into alone. */
    Reply part(String path) {
        return new Reply(map(at(path)), cautions);
    }

    /** The objects of a list, each to be looked into alone. */
    List<Reply> list(String path) {
        return ((List<?>) at(path))
                .stream().map(each -> new Reply(map(each), cautions)).toList();
    }

    @Override
    public String toString() {
        return answer.toString();
    }
}
