package chargehand.trade.sum;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was asked, from a neutral tree to the text of each field. */
final class AskTree {
    private static final int MOST_DIGITS = 40;

    private AskTree() {}

    /**
     * The fields as written.
     *
     * @param ask a map from field names to text, numbers, truth values, objects of these by name, or lists of any of
     *     these; nulls count as not given
     * @throws Refusal when it is no such map
     */
    static Map<String, String> written(@Nullable Object ask) {
        if (ask == null) {
            return Map.of();
        }
        if (!(ask instanceof Map<?, ?> fields)) {
            throw new Refusal("ask", "'ask' holds the fields by name, such as {\"thread\": \"M12\"}.");
        }
        var written = new LinkedHashMap<String, String>();
        fields.forEach((name, value) -> written.put(String.valueOf(name), text(String.valueOf(name), value)));
        return written;
    }

    private static String text(String field, @Nullable Object value) {
        if (value instanceof Collection<?> entries) {
            return entries.stream()
                    .map(entry -> entry(field, entry) + ListOf.CERTAIN)
                    .collect(Collectors.joining(" "));
        }
        return entry(field, value);
    }

    private static String entry(String field, @Nullable Object value) {
        return switch (value) {
            case null -> "";
            case String text -> text;
            case Boolean yes -> yes ? "yes" : "no";
            case Number number -> figures(field, number);
            case Map<?, ?> parts -> object(field, parts);
            default ->
                throw new Refusal(
                        field, "this field takes text, a number, yes or no, or a list of these, nothing deeper.");
        };
    }

    /** Values by name, as {@link EntryKind} reads them. */
    private static String object(String field, Map<?, ?> parts) {
        return parts.entrySet().stream()
                .filter(part -> part.getValue() != null)
                .map(part -> part(field, String.valueOf(part.getKey()), part.getValue()))
                .collect(Collectors.joining(" " + EntryKind.PART + " "));
    }

    private static String part(String field, String name, @Nullable Object value) {
        String text = value instanceof Map<?, ?> ? "" : entry(field, value);
        boolean parting =
                Stream.of(EntryKind.PART, EntryKind.IS, ListOf.CERTAIN).anyMatch(text::contains);
        if (parting || value instanceof Map<?, ?>) {
            throw new Refusal(field, "what stands under a name here is plain text or a number, nothing deeper.");
        }
        return name + EntryKind.IS + text;
    }

    /** The number without exponent; text and not a double is what a field reads, so that 0.1 is one tenth. */
    private static String figures(String field, Number number) {
        BigDecimal exact = switch (number) {
            case BigDecimal decimal -> decimal;
            case BigInteger whole -> new BigDecimal(whole);
            case Double real when !Double.isFinite(real) -> throw notANumber(field);
            case Float real when !Float.isFinite(real) -> throw notANumber(field);
            default -> new BigDecimal(number.toString());
        };
        if (exact.precision() > MOST_DIGITS || Math.abs(exact.scale()) > MOST_DIGITS) {
            throw new Refusal(field, "this number has more figures than anything asked here.");
        }
        return exact.toPlainString();
    }

    private static Refusal notANumber(String field) {
        return new Refusal(field, "this must be a number.");
    }
}
