package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The parts that are shipped as examples are read like anybody's. */
final class DemoPartsTest {
    private static final Path FOLDER = Path.of("..", "demo", "parts");
    private static final int COUNT = 12;

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void files_asShipped_areAllThere() throws IOException {
        assertThat(files()).hasSize(COUNT);
    }

    @ParameterizedTest
    @MethodSource("files")
    void read_shippedPart_standsWithoutRemark(Path file) throws IOException {
        PartReading reading = PartFile.read(Files.readString(file));

        assertThat(reading)
                .isInstanceOfSatisfying(
                        PartReading.Read.class,
                        read -> assertThat(read.remarks()).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("files")
    void write_shippedPart_readsBackTheSame(Path file) throws IOException {
        Part part = ((PartReading.Read) PartFile.read(Files.readString(file))).part();

        PartReading again = PartFile.read(PartFile.write(part));

        assertThat(again)
                .isInstanceOfSatisfying(
                        PartReading.Read.class, read -> assertThat(read.part()).isEqualTo(part));
    }
}
