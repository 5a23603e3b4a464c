package chargehand.app;

import chargehand.book.Entered;
import chargehand.book.demo.DemoShop;
import chargehand.book.job.JobNumber;
import chargehand.book.sqlite.NativeLibrary;
import chargehand.book.sqlite.SqliteBook;
import chargehand.book.use.Desk;
import chargehand.cli.Commands;
import chargehand.cli.Terminal;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import chargehand.web.Server;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Does once, unseen, what Chargehand is mostly asked to do. The launcher runs it after a build while the JVM writes down which
 * classes it takes; started from that archive, the same things begin quicker. It changes nothing and answers nobody.
 */
public final class Rehearsal {
    private static final List<String> PAGES =
            List.of("", "/drawing", "/drawing.svg", "/method", "/machine", "/sheet.pdf");

    private Rehearsal() {}

    public static void main(String... args) throws IOException {
        for (Sum sum : Sums.load().list()) {
            sum.examples().forEach(example -> rehearse(sum, example));
        }
        if (Files.isDirectory(Home.demo())) {
            rehearseShop();
        }
    }

    /** Fills a book with the demo's jobs, plans them, and reads the pages that are opened first. */
    private static void rehearseShop() throws IOException {
        NativeLibrary.unpackInto(Home.natives());
        Path folder = Files.createTempDirectory("rehearsal");
        try {
            rehearseShop(folder.resolve("shop.book"));
        } finally {
            delete(folder);
        }
    }

    private static void rehearseShop(Path file) throws IOException {
        Clock clock = Clock.systemUTC();
        var planner = new ShopPlanner();
        try (SqliteBook book = SqliteBook.open(file)) {
            List<JobNumber> planned = switch (new DemoShop(book, planner, clock).fill(DemoFolder.read())) {
                case Entered.Done<DemoShop.Filled>(DemoShop.Filled filled) -> filled.ready();
                case Entered.Refused<DemoShop.Filled> refused -> List.of();
            };
            try (Server server = Serving.start(Desk.at(book, planner, clock), 0)) {
                read(server, "");
                for (JobNumber job : planned) {
                    PAGES.forEach(page -> read(server, "jobs/" + job + page));
                }
            }
        }
    }

    private static void read(Server server, String page) {
        try (InputStream answer = server.address().resolve(page).toURL().openStream()) {
            answer.transferTo(OutputStream.nullOutputStream());
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
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
