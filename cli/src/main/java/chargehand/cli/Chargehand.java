package chargehand.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself, asked without a command: says what it can do. */
@Command(
        name = "./chargehand",
        customSynopsis = "./chargehand COMMAND …",
        description = {
            "From a request for a one-off part to a proved method sheet, for a small repair machine shop.",
            "It computes and never certifies: where work can hurt someone, the competent person decides."
        },
        footer = {"", "./chargehand COMMAND --help says what each one takes."})
final class Chargehand implements Callable<Integer> {
    private final Terminal terminal;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before the command is called
    private CommandSpec spec;

    Chargehand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(terminal.out());
        return Ended.ANSWERED;
    }
}
