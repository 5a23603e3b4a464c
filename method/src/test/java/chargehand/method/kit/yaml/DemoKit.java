package chargehand.method.kit.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The kit and rack files at the root of the project, as a user would write them. */
public final class DemoKit {
    private static final Path DEMO = Path.of("..", "demo");

    private DemoKit() {}

    /** The texts of the kit's files by name. */
    public static Map<String, String> files() {
        try (Stream<Path> paths = Files.list(DEMO.resolve("kit"))) {
            Map<String, String> files = new TreeMap<>();
            paths.forEach(path -> files.put(path.getFileName().toString(), text(path)));
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of one of the kit's files. */
    public static String file(String name) {
        return Objects.requireNonNull(files().get(name), name);
    }

    /** The text of the rack's file. */
    public static String rack() {
        return text(DEMO.resolve("rack.yaml"));
    }

    private static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of one of the demo parts. */
    public static String part(String name) {
        return text(DEMO.resolve("parts").resolve(name + ".yaml"));
    }

    /** The rack, which must be sound. */
    public static Rack soundRack() {
        RackRead read = RackFile.read(rack());
        assertThat(read).isInstanceOf(RackRead.Sound.class);
        return ((RackRead.Sound) read).rack();
    }

    /** The kit, which must be sound. */
    public static Kit kit() {
        return kitWith(UnaryOperator.identity());
    }

    /** The kit with its files' texts changed, which must leave it sound. */
    public static Kit kitWith(UnaryOperator<String> change) {
        Map<String, String> changed = files();
        changed.replaceAll((name, text) -> change.apply(text));
        KitRead read = KitFiles.read(changed);
        assertThat(read).isInstanceOf(KitRead.Sound.class);
        return ((KitRead.Sound) read).kit();
    }
}
