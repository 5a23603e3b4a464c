package chargehand.cli;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** JSON objects as text, one a line. A number with a point stays the decimal that was written. */
final class JsonLines {
    private static final JSON TEXT =
            JSON.std.with(JSON.Feature.USE_BIG_DECIMAL_FOR_FLOATS, JSON.Feature.WRITE_NULL_PROPERTIES);

    private JsonLines() {}

    /**
     * Reads one object that fills the whole line.
     *
     * @throws AskedWrongly when it is not one, saying where the reading stopped
     */
    static Map<String, Object> read(String line) {
        try (JsonParser parser = TEXT.createParser(line)) {
            parser.nextToken();
            if (!parser.isExpectedStartObjectToken()) {
                throw new AskedWrongly("this is not a JSON object, which begins with {");
            }
            Map<String, Object> object = TEXT.mapFrom(parser);
            if (parser.nextToken() != null) {
                throw new AskedWrongly("something follows the JSON object, and a line holds one only");
            }
            return object;
        } catch (JsonProcessingException broken) {
            var place = broken.getLocation();
            String at = place == null ? "" : " from character " + place.getColumnNr() + " on";
            throw new AskedWrongly("this cannot be read as JSON" + at, broken);
        } catch (NumberFormatException beyond) {
            throw new AskedWrongly("this cannot be read as JSON: a number in it is beyond reading", beyond);
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
    }

    /** The object as text without line breaks. */
    static String write(Map<String, ?> object) {
        try {
            return TEXT.asString(object);
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
    }
}
