package chargehand.trade;

import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.assertj.core.data.Offset;

/**
 * One published worked example or table entry, with where it was read. Only a row that was seen in print is evidence; one
 * marked {@code memory} or {@code computed} says so in the name of its test.
 */
public record PublishedRow(Map<String, Object> cells) {
    /** How the figures of a row were come by. */
    public enum Standing {
        /** Read in a published source. */
        SEEN("seen"),
        /** Some figures read, others remembered. */
        PARTLY("partly seen"),
        /** Worked out from the rule that the source gives. */
        FORMULA("computed from the formula"),
        /** The published figure from memory. */
        MEMORY("from memory");

        private final String said;

        Standing(String said) {
            this.said = said;
        }
    }

    /** Half a unit of the last printed figure, and a little for lengths that are whole nanometres. */
    private static final double HALF_A_FIGURE = 0.51;

    /** The rows of some kinds in a resource under {@code published/}. */
    public static List<PublishedRow> of(String resource, String... kinds) {
        List<PublishedRow> rows = all(resource).stream()
                .filter(row -> Set.of(kinds).contains(row.kind()))
                .toList();
        if (rows.isEmpty()) {
            throw new IllegalStateException("no row of " + List.of(kinds) + " in " + resource);
        }
        return rows;
    }

    /** Every row of a resource under {@code published/}. */
    public static List<PublishedRow> all(String resource) {
        try (InputStream in = PublishedRow.class.getResourceAsStream("published/" + resource)) {
            var rows = new ArrayList<PublishedRow>();
            for (Object each : JSON.std.listFrom(in)) {
                @SuppressWarnings("unchecked") // a JSON object has text keys
                var row = new PublishedRow((Map<String, Object>) each);
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a table beside a class: every cell is an input as well as an expectation, numbers as printed. */
    public static List<PublishedRow> table(Class<?> owner, String resource) {
        return Table.read(owner, resource).rows().stream()
                .map(row -> of(resource.replaceAll(".*/|published-|\\.csv", ""), row))
                .toList();
    }

    private static PublishedRow of(String kind, Row row) {
        var figures = new LinkedHashMap<String, Object>();
        for (String column : row.columns()) {
            String text = row.text(column);
            if (!text.isEmpty()) {
                figures.put(column, text.matches("[-+]?[0-9]*\\.?[0-9]+") ? new BigDecimal(text) : text);
            }
        }
        var cells = new LinkedHashMap<String, Object>(figures);
        cells.put("id", kind + " " + row.text("size"));
        cells.put("kind", kind);
        cells.put("inputs", figures);
        cells.put("expected", figures);
        return new PublishedRow(cells);
    }

    public String id() {
        return (String) cells.get("id");
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

    /** How far off a result may be, as the row itself states; of a table, half a unit of its last figure. */
    public Offset<Double> within(String output) {
        if (wanted(output) instanceof BigDecimal printed) {
            return Offset.offset(HALF_A_FIGURE * Math.pow(10, -printed.scale()));
        }
        Map<String, Object> tolerance = group("tol");
        Object absolute = tolerance.get("abs");
        if (absolute instanceof Number allowed) {
            return Offset.offset(allowed.doubleValue());
        }
        double relative = ((Number) at("tol", "rel")).doubleValue();
        return Offset.offset(Math.abs(want(output)) * relative + 1e-12);
    }

    /** How its figures were come by. */
    public Standing standing() {
        if (cells.get("status") instanceof String status) {
            switch (status.toLowerCase(Locale.ROOT)) {
                case "seen" -> {
                    return Standing.SEEN;
                }
                case "partial" -> {
                    return Standing.PARTLY;
                }
                case "computed" -> {
                    return Standing.FORMULA;
                }
                case "memory" -> {
                    return Standing.MEMORY;
                }
                default -> {}
            }
        }
        String seenAt = String.valueOf(cells.get("seen_at"));
        return switch (seenAt) {
            case "memory" -> Standing.MEMORY;
            case "computed" -> Standing.FORMULA;
            default -> seenAt.contains("memory") ? Standing.PARTLY : Standing.SEEN;
        };
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

    /** What is put beside the row where its printed figure is known to be wrong. */
    private String misprint() {
        Object wrong = cells.get("published_but_wrong");
        return wrong == null ? "" : "; printed wrongly: " + wrong;
    }

    /** A row of a table has its cells beside its id, since all of them are printed figures. */
    private boolean wholeTableRow() {
        return !cells.containsKey("tol");
    }

    @Override
    public String toString() {
        Object shown = wholeTableRow() ? "" : " " + group("inputs");
        return id() + shown + ", " + cells.get("source") + " (" + standing().said + misprint() + ")";
    }
}
