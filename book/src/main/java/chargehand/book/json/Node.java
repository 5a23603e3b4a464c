package chargehand.book.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A value in a JSON tree that knows its place.
 *
 * @param place the way to it from the top, such as {@code setUps[0].holding}; empty at the top
 * @param value a map, list, text, number or truth, or null for JSON's own null
 */
record Node(String place, @Nullable Object value) {
    Map<String, Node> fields() {
        if (!(value instanceof Map<?, ?> map)) {
            throw not("an object");
        }
        var fields = new LinkedHashMap<String, Node>();
        map.forEach((name, field) -> fields.put(String.valueOf(name), new Node(under(String.valueOf(name)), field)));
        return fields;
    }

    private String under(String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    /** A field that must be there. */
    Node field(String name) {
        return Optional.ofNullable(fields().get(name)).orElseThrow(() -> unreadable("'" + name + "' is missing"));
    }

    List<Node> items() {
        if (!(value instanceof List<?> list)) {
            throw not("a list");
        }
        return IntStream.range(0, list.size())
                .mapToObj(index -> new Node(place + "[" + index + "]", list.get(index)))
                .toList();
    }

    String text() {
        if (value instanceof String text) {
            return text;
        }
        throw not("a text");
    }

    boolean truth() {
        if (value instanceof Boolean truth) {
            return truth;
        }
        throw not("true or false");
    }

    double number() {
        if (value instanceof Number number) {
            return number.doubleValue();
        }
        throw not("a number");
    }

    long whole() {
        if (value instanceof Integer || value instanceof Long) {
            return ((Number) value).longValue();
        }
        throw not("a whole number");
    }

    private UnreadableJson not(String wanted) {
        return unreadable("should be " + wanted + ", not " + value);
    }

    UnreadableJson unreadable(String say) {
        return new UnreadableJson(place, say);
    }
}
