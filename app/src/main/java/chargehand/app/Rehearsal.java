package chargehand.app;

import chargehand.cli.Commands;
import chargehand.cli.Terminal;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Does once, unseen, what Chargehand is mostly asked to do. The launcher runs it after a build while the JVM writes down which
 * classes it takes; started from that archive, the same things begin quicker. It changes nothing and answers nobody.
 */
public final class Rehearsal {
    private Rehearsal() {}

    public static void main(String... args) {
        for (Sum sum : Sums.load().list()) {
            sum.examples().forEach(example -> rehearse(sum, example));
        }
    }

    private static void rehearse(Sum sum, Example example) {
        var words = new ArrayList<>(List.of("sum", sum.name()));
        example.ask().forEach((field, value) -> words.add(field + "=" + value));
        run(words);
        words.add("--json");
        run(words);
    }

    private static void run(List<String> words) {
        var unseen = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        var terminal = new Terminal(InputStream.nullInputStream(), unseen, unseen);
        Commands.of(terminal, "").run(words.toArray(String[]::new));
    }
}
