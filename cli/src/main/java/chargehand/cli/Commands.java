package chargehand.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;

/**
 * All the commands behind one door. To add one: write its class ({@code @Command}, {@code Callable<Integer>} handing back
 * one of {@link Ended}) and name it in {@link #of}, or in the wiring where it needs what only the wiring has.
 */
public final class Commands {
    private static final int HELP_WIDTH = 100;

    private final Terminal terminal;
    private final CommandLine line;

    private Commands(Terminal terminal, String version) {
        this.terminal = terminal;
        this.line = new CommandLine(new Chargehand(terminal));
        line.getCommandSpec()
                .version(version)
                .addOption(OptionSpec.builder("--version")
                        .versionHelp(true)
                        .description("Say which version this is.")
                        .build());
    }

    /**
     * The commands that this module knows.
     *
     * @param version what {@code --version} answers
     */
    public static Commands of(Terminal terminal, String version) {
        return new Commands(terminal, version);
    }

    /** The same with one more command, an object with picocli's {@code @Command}. */
    public Commands with(Callable<Integer> command) {
        line.addSubcommand(command);
        return this;
    }

    /** Runs one command line and hands back how it ended, one of {@link Ended}. Throws nothing. */
    public int run(String... args) {
        line.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
        dress(line);
        IExecutionExceptionHandler fault = (exception, command, parsed) -> Faults.tell(exception, terminal);
        line.setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setParameterExceptionHandler((exception, given) -> {
                    terminal.err().println(AskedWording.of(exception));
                    return Ended.ASKED_WRONGLY;
                })
                .setExecutionExceptionHandler(fault);
        try {
            return line.execute(args);
        } finally {
            terminal.flush();
        }
    }

    private static void dress(CommandLine line) {
        var spec = line.getCommandSpec();
        spec.usageMessage()
                .width(HELP_WIDTH)
                .synopsisHeading("")
                .descriptionHeading("%n")
                .parameterListHeading("%n")
                .optionListHeading("%n")
                .commandListHeading("%nCommands%n")
                .sortOptions(false);
        if (!spec.optionsMap().containsKey("--help")) {
            spec.addOption(OptionSpec.builder("--help")
                    .usageHelp(true)
                    .description("Say what this command takes.")
                    .build());
        }
        line.getSubcommands().values().forEach(Commands::dress);
    }

    /** The names of all commands, in the order they were added. */
    public List<String> names() {
        return List.copyOf(line.getSubcommands().keySet());
    }
}
