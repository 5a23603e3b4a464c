package chargehand.cli;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.OutcomeText;
import chargehand.trade.sum.OutcomeTree;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Asks one sum and prints its answer with the working, or the line that a stream would carry. */
final class SumCommand implements Command {
    private static final Option JSON = Option.flag("--json", "Print the line that ./chargehand sums would give.");

    private final Terminal terminal;

    SumCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "sum",
                "NAME FIELD=VALUE …",
                List.of(
                        "Ask one sum and see its answer with the working.",
                        "",
                        "  ./chargehand sum size 'size=1 3/8' --unit in",
                        "",
                        "./chargehand sum NAME --help says what one sum takes; ./chargehand sums --list names them all."),
                List.of(JSON, BareUnit.OPTION));
    }

    @Override
    public String help(Given given) {
        return given.words().isEmpty() ? usage().text() : new SumReference(sum(given)).text();
    }

    @Override
    public int run(Given given) {
        Sum sum = sum(given);
        Map<String, String> ask = ask(given.words().subList(1, given.words().size()));
        Outcome outcome = Asking.ask(sum, ask, BareUnit.of(given));
        if (given.has(JSON.name())) {
            var line = new LinkedHashMap<String, Object>();
            line.put("sum", sum.name());
            line.putAll(OutcomeTree.of(outcome));
            terminal.out().append(JsonLines.write(line)).append('\n');
        } else {
            PrintStream to = outcome instanceof Outcome.Answered ? terminal.out() : terminal.err();
            OutcomeText.lines(outcome, shownFirst(ask, given)).forEach(to::println);
        }
        return outcome instanceof Outcome.Answered ? Ended.ANSWERED : Ended.ASKED_WRONGLY;
    }

    private static Sum sum(Given given) {
        Sums sums = Sums.load();
        String names = sums.list().stream().map(Sum::name).collect(Collectors.joining(", "));
        if (given.words().isEmpty()) {
            throw new AskedWrongly("Which sum? There are " + names + ".");
        }
        String name = given.words().getFirst();
        return sums.find(name)
                .orElseThrow(() -> new AskedWrongly("There is no sum '" + name + "'. There are " + names + "."));
    }

    /** The unit the asker thinks in: the ask's own, where it could be read, or else that of bare numbers. */
    private static LengthUnit shownFirst(Map<String, String> ask, Given given) {
        String own = ask.getOrDefault(Asking.UNIT, "");
        return own.isBlank() ? BareUnit.of(given) : BareUnit.read(own);
    }

    private static Map<String, String> ask(List<String> fields) {
        var ask = new LinkedHashMap<String, String>();
        for (String written : fields) {
            int equals = written.indexOf('=');
            if (equals < 1) {
                throw new AskedWrongly("'" + written + "' is not FIELD=VALUE, such as 'pitch=19 tpi'.");
            }
            String field = written.substring(0, equals).strip();
            if (ask.putIfAbsent(field, written.substring(equals + 1)) != null) {
                throw new AskedWrongly(field + " is given twice.");
            }
        }
        return ask;
    }
}
