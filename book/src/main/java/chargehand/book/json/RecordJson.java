package chargehand.book.json;

import com.fasterxml.jackson.jr.ob.JSON;
import com.fasterxml.jackson.jr.ob.JSON.Feature;
import com.fasterxml.jackson.jr.ob.JSONObjectException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/**
 * Writes one type as JSON and reads it back equal. Quantities stand as in the answers of sums, such as
 * {@code {"mm":12.7,"in":0.5}}; a thread is its designation; a case of a closed set has its {@code kind} in words.
 *
 * @param <T> a record, or a sealed interface of records
 */
public final class RecordJson<T> {
    private final Class<T> type;
    private final Shape<Object> shape;

    private RecordJson(Class<T> type) {
        this.type = type;
        this.shape = new Shapes().of(type);
    }

    /** The JSON of a type; refuses one that cannot be written without loss. */
    public static <T> RecordJson<T> of(Class<T> type) {
        return new RecordJson<>(type);
    }

    /** The value as a tree of maps, lists, texts, numbers and truths, to stand in a larger one. */
    @SuppressWarnings("unchecked") // records and closed sets are written as objects
    public Map<String, Object> tree(T value) {
        return (Map<String, Object>) shape.write(value);
    }

    /** The value on one line. */
    public String line(T value) {
        return text(JSON.std, tree(value));
    }

    /** The value with a line to each field, to be read by people. */
    public String pretty(T value) {
        return text(JSON.std.with(Feature.PRETTY_PRINT_OUTPUT), tree(value));
    }

    private static String text(JSON json, Map<String, Object> tree) {
        try {
            return json.asString(tree);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory", impossible);
        }
    }

    /**
     * The value that was written so.
     *
     * @throws UnreadableJson naming the place, when it is not the JSON of this type
     */
    public T read(String text) {
        try {
            return type.cast(shape.read(new Node("", JSON.std.anyFrom(text))));
        } catch (JSONObjectException broken) {
            throw new UnreadableJson("", String.valueOf(broken.getOriginalMessage()), broken);
        } catch (IOException broken) {
            throw new UnreadableJson("", String.valueOf(broken.getMessage()), broken);
        }
    }
}
