package chargehand.app;

import chargehand.cli.Commands;
import chargehand.cli.Ended;
import chargehand.cli.Terminal;
import java.util.Optional;

/** Where the program begins. */
public final class Main {
    private Main() {}

    /** Runs one command line and ends the process with what it hands back. */
    public static void main(String... args) {
        Terminal terminal = Terminal.ofProcess();
        int ended = Commands.of(terminal, version())
                .with(new DemoCommand(terminal))
                .with(new ServeCommand(terminal))
                .run(args);
        if (ended != Ended.ANSWERED) {
            System.exit(ended); // not called without need: it loads the JDK's logging
        }
    }

    private static String version() {
        String packaged = Main.class.getPackage().getImplementationVersion();
        return "Chargehand " + Optional.ofNullable(packaged).orElse("not packaged") + ", on Java " + Runtime.version();
    }
}
