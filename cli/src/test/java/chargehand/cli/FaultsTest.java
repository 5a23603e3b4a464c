package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

final class FaultsTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Terminal terminal = new Terminal(
            InputStream.nullInputStream(),
            new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8));

    @Test
    void tell_askedWrongly_endsWithTwoAndTheSentence() {
        assertThat(Faults.tell(new AskedWrongly("There is no such part."), terminal))
                .isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said()).isEqualTo("There is no such part.\n");
    }

    @Test
    void tell_missingFile_namesIt() {
        var wrapped = new UncheckedIOException(new NoSuchFileException("kit/lathe.yaml"));
        assertThat(Faults.tell(wrapped, terminal)).isEqualTo(Ended.WORLD_FAILED);
        assertThat(said()).isEqualTo("There is no file or folder kit/lathe.yaml.\n");
    }

    @Test
    void tell_deniedFile_namesIt() {
        assertThat(Faults.tell(new AccessDeniedException("/out"), terminal)).isEqualTo(Ended.WORLD_FAILED);
        assertThat(said()).startsWith("/out may not be");
    }

    @Test
    void tell_defect_keepsTheTraceInAFileAndOffTheScreen() throws Exception {
        assertThat(Faults.tell(new IllegalStateException("the jaws are open"), terminal))
                .isEqualTo(Ended.WORLD_FAILED);
        assertThat(said()).contains("a fault of its own").doesNotContain("jaws", "Exception", "\tat ");
        String words = said().strip();
        Path report = Path.of(words.substring(words.lastIndexOf(' ') + 1, words.length() - 1));
        assertThat(report).content().contains("the jaws are open", "\tat ");
        Files.delete(report);
    }

    private String said() {
        terminal.flush();
        return err.toString(StandardCharsets.UTF_8);
    }
}
