package chargehand.drawing;

import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Parts made up to be hard to lay out: many steps, tiny grooves, bores from both ends, everything at once; all invented. */
public final class StressParts {
    private static final Path FOLDER = Path.of("src", "test", "resources", "chargehand", "drawing", "stress");

    private StressParts() {}

    /** All of them, by the names of their files. */
    public static List<Part> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().map(StressParts::read).toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static Part read(Path file) {
        try {
            return switch (PartFile.read(Files.readString(file))) {
                case PartReading.Read(Part part, var remarks) -> part;
                case PartReading.Faulty(var faults) -> throw new AssertionError(file + ": " + faults);
            };
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
