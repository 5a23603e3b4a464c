package chargehand.method.kit.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A published schema lying beside what it describes. */
public final class SchemaText {
    private SchemaText() {}

    /** The text of the schema beside a class. */
    public static String of(Class<?> described, String resource) {
        try (InputStream in = described.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no schema " + resource + " beside " + described.getName());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read schema " + resource, e);
        }
    }
}
