package chargehand.cli;

import java.io.IOException;

/** One command: what it takes and the doing of it. */
public interface Command {
    /** What it is called and what it takes. */
    Usage usage();

    /**
     * Does what was asked.
     *
     * @return how it ended, one of {@link Ended}
     * @throws AskedWrongly with the sentence to show, when what was asked cannot be answered as it stands
     * @throws IOException when a file or the disk fails
     */
    int run(Given given) throws IOException;

    /** What {@code --help} says. */
    default String help(Given given) {
        return usage().text();
    }
}
