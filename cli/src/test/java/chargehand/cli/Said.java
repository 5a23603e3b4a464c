package chargehand.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What one command line said, run as a person would run it. */
record Said(int ended, String out, String err) {
    static Said by(String... args) {
        return fed("", args);
    }

    /** With {@code in} on standard input. */
    static Said fed(String in, String... args) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var terminal = new Terminal(
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8));
        int ended = Commands.of(terminal, "Chargehand of the tests").run(args);
        return new Said(ended, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    List<String> lines() {
        return out.lines().toList();
    }
}
