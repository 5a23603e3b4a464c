package chargehand.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Our own sentences for a command line that cannot be read: what was found, and what would do. */
final class AskedWording {
    private AskedWording() {}

    static String of(ParameterException fault) {
        CommandSpec command = fault.getCommandLine().getCommandSpec();
        return switch (fault) {
            case UnmatchedArgumentException unmatched ->
                "'" + unmatched.getUnmatched().getFirst() + "' is not "
                        + (command.parent() == null && !unmatched.isUnknownOption()
                                ? "a command"
                                : "something that " + command.qualifiedName() + " takes")
                        + ". It takes " + takes(command) + ".";
            case MissingParameterException missing ->
                command.qualifiedName() + " needs "
                        + missing.getMissing().stream()
                                .map(AskedWording::written)
                                .collect(Collectors.joining(" and "))
                        + ". " + more(command);
            case OverwrittenOptionException twice -> written(twice.getOverwritten()) + " may be given once only.";
            default -> fault.getMessage() + " " + more(command);
        };
    }

    private static String takes(CommandSpec command) {
        List<String> names = new ArrayList<>(command.subcommands().keySet());
        command.positionalParameters().forEach(parameter -> names.add(parameter.paramLabel()));
        command.options().forEach(option -> names.add(option.longestName()));
        return String.join(", ", names);
    }

    private static String more(CommandSpec command) {
        return command.qualifiedName() + " --help says more.";
    }

    private static String written(ArgSpec argument) {
        return switch (argument) {
            case OptionSpec option -> option.longestName() + " " + option.paramLabel();
            case PositionalParamSpec parameter -> parameter.paramLabel();
            default -> argument.paramLabel();
        };
    }
}
