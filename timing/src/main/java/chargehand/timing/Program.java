package chargehand.timing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Chargehand run from outside, by its launcher, as a person runs it. */
record Program(Path launcher) {
    /**
     * Runs one command to its end.
     *
     * @param in what is fed to it
     * @return what it printed
     * @throws IllegalStateException when it does not end with 0
     */
    List<String> run(List<String> in, String... args) throws IOException, InterruptedException {
        Path fed = Files.createTempFile("measure", ".in");
        Path out = Files.createTempFile("measure", ".out");
        try {
            Files.write(fed, in);
            var command = new ArrayList<>(List.of(launcher.toString()));
            command.addAll(List.of(args));
            var process = new ProcessBuilder(command)
                    .redirectInput(fed.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            int ended = process.waitFor();
            if (ended != 0) {
                throw new IllegalStateException(command + " ended with " + ended);
            }
            return Files.readAllLines(out);
        } finally {
            Files.delete(fed);
            Files.delete(out);
        }
    }
}
