package chargehand.app;

import chargehand.book.use.Desk;
import chargehand.cli.AskedWrongly;
import chargehand.cli.Option;
import chargehand.cli.Terminal;
import chargehand.trade.sum.Sums;
import chargehand.web.Server;
import chargehand.web.serving.Counter;
import java.net.BindException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/** Serves a book until the program is told to stop. */
final class Serving {
    /** The port at which a shop is found unless it asks for another. */
    static final int USUAL_PORT = 7414;

    static final Option PORT = Option.valued(
            "--port", "N", "The port to serve at; " + USUAL_PORT + " when left out, 0 for any that is free.");

    private static final int MOST_PORT = 65_535;

    private Serving() {}

    /** The port asked for. */
    static int port(Optional<String> written) {
        String text = written.orElse(Integer.toString(USUAL_PORT));
        if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) > MOST_PORT) {
            throw new AskedWrongly("--port is a whole number up to " + MOST_PORT + ", not '" + text + "'.");
        }
        return Integer.parseInt(text);
    }

    /** Serves a desk, says where, and comes back when the program is stopped. */
    static void serve(Desk desk, int port, Terminal terminal) {
        try (Server server = start(desk, port)) {
            terminal.out().println("Open " + server.address() + " in a browser on this machine. Stop with Ctrl-C.");
            terminal.flush();
            untilStopped();
        }
    }

    static Server start(Desk desk, int port) {
        try {
            return Server.start(new Counter(desk, Sums.load()), port);
        } catch (RuntimeException failed) {
            if (isTaken(failed)) {
                throw new AskedWrongly(
                        "Port " + port + " is in use by another program; --port 0 takes any that is free.", failed);
            }
            throw failed;
        }
    }

    private static boolean isTaken(Throwable failed) {
        for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException) {
                return true;
            }
        }
        return false;
    }

    private static void untilStopped() {
        var stopped = new CountDownLatch(1);
        Thread main = Thread.currentThread();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            stopped.countDown();
            try {
                main.join(6_000);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        }));
        try {
            stopped.await();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
