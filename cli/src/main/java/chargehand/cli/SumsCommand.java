package chargehand.cli;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.OutcomeTree;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers sums as a stream: one JSON object a line in, one a line out, in the same order, for as long as lines come. */
final class SumsCommand implements Command {
    private static final Option LIST = Option.flag("--list", "List the sums there are, with what each answers.");

    /** How many lines may pass before it is looked whether anyone still reads the answers. */
    private static final int LINES_UNSEEN = 1_000;

    private final Terminal terminal;

    SumsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "sums",
                "",
                List.of(
                        "Answer many sums: JSON lines in, JSON lines out, in the same order.",
                        "",
                        "  in   {\"id\":1,\"sum\":\"size\",\"ask\":{\"size\":\"1 3/8\",\"unit\":\"in\"}}",
                        "  out  {\"id\":1,\"sum\":\"size\",\"answer\":{…},\"working\":[…],\"cautions\":[…],\"taken\":{…}}",
                        "  or   {\"id\":1,\"sum\":\"size\",\"error\":{\"field\":\"size\",\"say\":\"…\"}}",
                        "",
                        "A line that is not a JSON object is answered with its number: {\"line\":7,\"error\":{…}}.",
                        "Empty lines are passed over."),
                List.of(LIST, BareUnit.OPTION));
    }

    @Override
    public int run(Given given) throws IOException {
        given.noWords();
        Sums sums = Sums.load();
        if (given.has(LIST.name())) {
            list(sums);
            return Ended.ANSWERED;
        }
        return stream(sums, BareUnit.of(given));
    }

    private void list(Sums sums) {
        int widest =
                sums.list().stream().mapToInt(sum -> sum.name().length()).max().orElse(0);
        for (Sum sum : sums.list()) {
            terminal.out()
                    .println(sum.name() + " ".repeat(widest + 3 - sum.name().length()) + sum.purpose());
        }
    }

    private int stream(Sums sums, LengthUnit unit) throws IOException {
        var lines = new BufferedReader(new InputStreamReader(terminal.in(), StandardCharsets.UTF_8));
        PrintStream out = terminal.out();
        int ended = Ended.ANSWERED;
        long number = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                out.append(JsonLines.write(answer(sums, unit, line, number))).append('\n');
            } catch (RuntimeException | StackOverflowError defect) {
                out.append(JsonLines.write(refused(number, Faults.reported(defect))))
                        .append('\n');
                ended = Ended.WORLD_FAILED;
            }
            if ((number % LINES_UNSEEN == 0 || !lines.ready()) && out.checkError()) {
                return Ended.WORLD_FAILED;
            }
        }
        return ended;
    }

    private Map<String, Object> answer(Sums sums, LengthUnit unit, String line, long number) {
        try {
            return sums.answer(JsonLines.read(line), unit);
        } catch (AskedWrongly unreadable) {
            return refused(number, unreadable.say());
        }
    }

    private static Map<String, Object> refused(long number, String say) {
        var refused = new LinkedHashMap<String, Object>();
        refused.put("line", number);
        refused.putAll(OutcomeTree.of(new Outcome.Refused("line", say)));
        return refused;
    }
}
