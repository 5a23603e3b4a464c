package chargehand.book.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.job.JobNumber;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was acknowledged is in the book, even when the program is killed between two lines. */
final class PowerCutTest {
    private static final int BEFORE_THE_CUT = 40;
    private static final long PATIENCE_S = 30;

    @TempDir
    Path folder;

    @Test
    void program_killed_losesNothingAcknowledged() throws IOException, InterruptedException {
        Path file = folder.resolve("book.sqlite");
        List<JobNumber> acknowledged = acknowledgedBeforeTheCut(file);
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(BEFORE_THE_CUT);
        try (SqliteBook book = SqliteBook.open(file)) {
            assertThat(acknowledged)
                    .allSatisfy(number -> assertThat(
                                    book.read(ledger -> ledger.jobs().find(number))
                                            .isPresent())
                            .isTrue());
        }
    }

    private static List<JobNumber> acknowledgedBeforeTheCut(Path file) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Acknowledging.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        var acknowledged = new ArrayList<JobNumber>();
        try (BufferedReader said = program.inputReader()) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                JobNumber.parse(line).ifPresent(acknowledged::add);
                if (acknowledged.size() == BEFORE_THE_CUT) {
                    program.toHandle().destroyForcibly();
                }
            }
        } finally {
            program.destroyForcibly();
        }
        assertThat(program.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        return acknowledged;
    }
}
