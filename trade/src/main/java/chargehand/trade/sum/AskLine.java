package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One ask as a line of a stream: {@code {"id", "sum", "ask": {field: value}}} in, the same with {@code "answer"},
 * {@code "working"} and {@code "cautions"}, or {@code "error"}, out. Whatever is in the line, an answer or a refusal comes
 * out.
 */
final class AskLine {
    private static final int MOST_SAID_BACK = 40;

    private final Sums sums;
    private final LengthUnit shopUnit;

    AskLine(Sums sums, LengthUnit shopUnit) {
        this.sums = sums;
        this.shopUnit = shopUnit;
    }

    Map<String, Object> answer(Map<String, ?> line) {
        var tree = new LinkedHashMap<String, Object>();
        carry(tree, "id", line.get("id"));
        carry(tree, "sum", line.get("sum"));
        tree.putAll(OutcomeTree.of(outcome(line)));
        return tree;
    }

    /** Hands back what the asker knows the line by, as it came. */
    private static void carry(Map<String, Object> tree, String name, @Nullable Object value) {
        if (value != null) {
            tree.put(name, value);
        }
    }

    private Outcome outcome(Map<String, ?> line) {
        try {
            refuseUnknown(line);
            return Asking.ask(sum(line.get("sum")), AskTree.written(line.get("ask")), shopUnit);
        } catch (Refusal refusal) {
            return new Outcome.Refused(refusal.field(), refusal.say());
        }
    }

    private static void refuseUnknown(Map<String, ?> line) {
        for (String name : line.keySet()) {
            if (!name.equals("id") && !name.equals("sum") && !name.equals("ask")) {
                throw new Refusal(shortened(name), "a line has id, sum and ask; the fields of the sum go inside ask.");
            }
        }
    }

    private Sum sum(@Nullable Object name) {
        return Optional.ofNullable(name)
                .flatMap(given -> sums.find(given.toString()))
                .orElseThrow(() -> new Refusal("sum", unknown(name)));
    }

    private String unknown(@Nullable Object name) {
        String names = sums.list().stream().map(Sum::name).collect(Collectors.joining(", "));
        String found = name == null ? "which sum is not said" : "there is no sum '" + shortened(name.toString()) + "'";
        return found + "; there are " + names + ".";
    }

    private static String shortened(String text) {
        return text.length() <= MOST_SAID_BACK ? text : text.substring(0, MOST_SAID_BACK) + "…";
    }
}
