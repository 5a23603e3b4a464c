package chargehand.timing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder for as long as something is measured in it. */
record Scratch(Path folder) implements AutoCloseable {
    Scratch() throws IOException {
        this(Files.createTempDirectory("measure"));
    }

    @Override
    public void close() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
