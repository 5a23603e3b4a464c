package chargehand.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * All the commands behind one door. To add one: write its class and name it in {@link #of}, or in the wiring where it needs
 * what only the wiring has.
 */
public final class Commands {
    private static final Option VERSION = Option.flag("--version", "Say which version this is.");
    private static final Usage USAGE = new Usage(
            "",
            "COMMAND …",
            List.of(
                    "From a request for a one-off part to a proved method sheet, for a small repair machine shop.",
                    "It computes and never certifies: where work can hurt someone, the competent person decides."),
            List.of(VERSION));

    private final Terminal terminal;
    private final String version;
    private final List<Command> commands = new ArrayList<>();

    private Commands(Terminal terminal, String version) {
        this.terminal = terminal;
        this.version = version;
    }

    /**
     * The commands that this module knows.
     *
     * @param version what {@code --version} says
     */
    public static Commands of(Terminal terminal, String version) {
        return new Commands(terminal, version)
                .with(new PartCommand(terminal))
                .with(new MethodCommand(terminal))
                .with(new SumCommand(terminal))
                .with(new SumsCommand(terminal));
    }

    /** The same with one more command. */
    public Commands with(Command command) {
        commands.add(command);
        return this;
    }

    /** Runs one command line and hands back how it ended, one of {@link Ended}. Throws nothing. */
    public int run(String... args) {
        try {
            return run(List.of(args));
        } catch (Exception | StackOverflowError | OutOfMemoryError fault) {
            return Faults.tell(fault, terminal);
        } finally {
            terminal.flush();
        }
    }

    private int run(List<String> args) throws Exception {
        if (args.isEmpty() || args.getFirst().startsWith("-")) {
            return runWithoutCommand(Given.read(USAGE, args));
        }
        Command command = command(args.getFirst());
        Given given = Given.read(command.usage(), args.subList(1, args.size()));
        if (given.has(Option.HELP.name())) {
            terminal.out().print(command.help(given));
            return Ended.ANSWERED;
        }
        return command.run(given);
    }

    private int runWithoutCommand(Given given) {
        if (given.has(VERSION.name())) {
            terminal.out().println(version);
        } else {
            terminal.out().print(help());
        }
        return Ended.ANSWERED;
    }

    private Command command(String name) {
        return commands.stream()
                .filter(command -> command.usage().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AskedWrongly("'" + name + "' is not a command. The commands are "
                        + commands.stream()
                                .map(command -> command.usage().name())
                                .collect(Collectors.joining(", "))
                        + "; ./chargehand --help says what each does."));
    }

    private String help() {
        var page = new TextPage();
        page.heading("Commands");
        page.rows(commands.stream()
                .map(Command::usage)
                .map(usage -> List.of(usage.name(), usage.about().getFirst()))
                .toList());
        page.line("");
        page.line("./chargehand COMMAND --help says what each one takes.");
        return USAGE.text() + page.text();
    }
}
