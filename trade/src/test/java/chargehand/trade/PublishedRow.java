package chargehand.trade;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;

/**
 * One published worked example or table entry, with where it was read. Only a row that was seen in print is evidence; one
 * marked {@code memory} or {@code computed} says so in the name of its test.
 */
public record PublishedRow(Map<String, Object> cells) {
    /** The rows of one kind in a resource under {@code published/}. */
    public static List<PublishedRow> of(String resource, String... kinds) {
        var rows = new ArrayList<PublishedRow>();
        for (Object each : all(resource)) {
            @SuppressWarnings("unchecked") // a JSON object has text keys
            var row = new PublishedRow((Map<String, Object>) each);
            if (List.of(kinds).contains(row.kind())) {
                rows.add(row);
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException("no row of " + List.of(kinds) + " in " + resource);
        }
        return rows;
    }

    private static List<Object> all(String resource) {
        try (InputStream in = PublishedRow.class.getResourceAsStream("published/" + resource)) {
            return JSON.std.listFrom(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String kind() {
        return (String) cells.get("kind");
    }

    public boolean has(String input) {
        return group("inputs").containsKey(input);
    }

    public boolean expects(String output) {
        return group("expected").containsKey(output);
    }

    public String text(String input) {
        return String.valueOf(at("inputs", input));
    }

    public double number(String input) {
        return ((Number) at("inputs", input)).doubleValue();
    }

    public Object given(String input) {
        return at("inputs", input);
    }

    public Object wanted(String output) {
        return at("expected", output);
    }

    public double want(String output) {
        return ((Number) wanted(output)).doubleValue();
    }

    public String wantText(String output) {
        return String.valueOf(wanted(output));
    }

    /** How far off a result may be, as the row itself states. */
    public Offset<Double> within(String output) {
        Map<String, Object> tolerance = group("tol");
        Object absolute = tolerance.get("abs");
        if (absolute instanceof Number allowed) {
            return Offset.offset(allowed.doubleValue());
        }
        double relative = ((Number) at("tol", "rel")).doubleValue();
        return Offset.offset(Math.abs(want(output)) * relative + 1e-12);
    }

    private Object at(String group, String name) {
        Object value = group(group).get(name);
        if (value == null) {
            throw new IllegalStateException(this + " has no " + name);
        }
        return value;
    }

    @SuppressWarnings("unchecked") // a JSON object has text keys
    private Map<String, Object> group(String name) {
        return (Map<String, Object>) cells.getOrDefault(name, Map.of());
    }

    private String standing() {
        String seenAt = String.valueOf(cells.get("seen_at"));
        return switch (seenAt) {
            case "memory" -> "from memory";
            case "computed" -> "computed from the formula";
            default -> "seen";
        };
    }

    @Override
    public String toString() {
        return cells.get("id") + " " + group("inputs") + ", " + cells.get("source") + " (" + standing() + ")";
    }
}
