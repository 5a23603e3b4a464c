package chargehand.app;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.cli.Commands;
import chargehand.cli.Ended;
import chargehand.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shipped demo is planned and printed by the build, with its numbers held. */
final class DemoCommandTest {
    private static final int JOBS = 12;
    private static final int DRAWN = 12;
    private static final int PROVED = 12;

    @TempDir
    private Path folder;

    @Test
    void run_once_printsEveryDrawingAndTheSheetOfEveryPlannedJob() throws IOException {
        System.setProperty("chargehand.home", "..");
        var out = new ByteArrayOutputStream();
        var print = new PrintStream(out, true, StandardCharsets.UTF_8);
        var terminal = new Terminal(InputStream.nullInputStream(), print, print);
        int ended = Commands.of(terminal, "")
                .with(new DemoCommand(terminal))
                .run("demo", "--once", "--out", folder.toString());
        assertThat(ended).isEqualTo(Ended.ANSWERED);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains(JOBS + " jobs in the book, " + PROVED + " with a proved method.");
        assertThat(files("-drawing.pdf")).hasSize(DRAWN);
        assertThat(files("-drawing.svg")).hasSize(DRAWN);
        assertThat(files("-method.pdf")).hasSize(PROVED);
    }

    private List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }
}
