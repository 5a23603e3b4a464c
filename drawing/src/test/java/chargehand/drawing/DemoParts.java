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

/** The part files of the demo workshop, which lie at the root of the project. */
public final class DemoParts {
    private static final Path FOLDER = Path.of("..", "demo", "parts");

    private DemoParts() {}

    /** The names of the files without their ending, in order. */
    public static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.substring(0, name.length() - ".yaml".length()))
                    .sorted()
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    public static Part read(String name) {
        try {
            return switch (PartFile.read(Files.readString(FOLDER.resolve(name + ".yaml")))) {
                case PartReading.Read(Part part, var remarks) -> part;
                case PartReading.Faulty(var faults) -> throw new AssertionError(name + ": " + faults);
            };
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    /** The demo parts and the sample parts. */
    public static List<Part> andSamples() {
        return Stream.concat(names().stream().map(DemoParts::read), SampleParts.turned().stream())
                .toList();
    }
}
