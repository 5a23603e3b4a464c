package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartGenerator;
import chargehand.part.testing.TextMutator;
import chargehand.part.yaml.tree.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.Timeout.ThreadMode;

/** Spoiled files are read or refused plainly; nothing is thrown, nothing hangs. */
final class SpoiledFilesTest {
    private static final int SPOILED = 1_500;

    private static List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : DemoPartsTest.files()) {
            texts.add(Files.readString(file));
        }
        var generator = new PartGenerator(99);
        var further = new PartGenerator(98, PartGenerator.Range.ALL);
        for (int i = 0; i < 20; i++) {
            texts.add(PartFile.write(generator.part()));
            texts.add(PartFile.write(further.part()));
        }
        return texts;
    }

    @Test
    @Timeout(value = 120, unit = TimeUnit.SECONDS, threadMode = ThreadMode.SEPARATE_THREAD)
    void read_spoiledFile_isAnsweredOrRefusedPlainly() throws IOException {
        List<String> texts = texts();
        var mutator = new TextMutator(4711);
        int refused = 0;
        for (int i = 0; i < SPOILED; i++) {
            String text = mutator.spoiled(texts.get(i % texts.size()));
            switch (PartFile.read(text)) {
                case PartReading.Read read -> assertThat(read.part().title()).isNotBlank();
                case PartReading.Faulty faulty -> {
                    refused++;
                    faulty.faults().forEach(fault -> assertPlain(fault, text));
                }
            }
        }
        assertThat(refused).isGreaterThan(SPOILED / 2);
    }

    @Test
    @Timeout(value = 120, unit = TimeUnit.SECONDS, threadMode = ThreadMode.SEPARATE_THREAD)
    void read_fileWithOtherSizes_isRefusedPlainlyOrReadsBackTheSame() throws IOException {
        List<String> texts = texts();
        var mutator = new TextMutator(1918);
        for (int i = 0; i < SPOILED; i++) {
            String text = mutator.resized(texts.get(i % texts.size()));
            switch (PartFile.read(text)) {
                case PartReading.Read read ->
                    assertThat(PartFile.read(PartFile.write(read.part())))
                            .as(text)
                            .isInstanceOfSatisfying(
                                    PartReading.Read.class,
                                    again -> assertThat(again.part()).isEqualTo(read.part()));
                case PartReading.Faulty faulty -> faulty.faults().forEach(fault -> assertPlain(fault, text));
            }
        }
    }

    private static void assertPlain(Fault fault, String text) {
        long lines = text.chars().filter(c -> c == '\n').count() + 1;
        assertThat(fault.line()).as(fault + "\n" + text).isBetween(1, (int) lines + 1);
        assertThat(fault.column()).isPositive();
        assertThat(fault.say())
                .as(text)
                .endsWith(".")
                .doesNotContainIgnoringCase("invalid", "error", "exception", "java.");
    }
}
