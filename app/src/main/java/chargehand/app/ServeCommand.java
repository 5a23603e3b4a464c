package chargehand.app;

import chargehand.book.sqlite.NativeLibrary;
import chargehand.book.sqlite.SqliteBook;
import chargehand.book.store.BookUnusable;
import chargehand.book.use.Desk;
import chargehand.cli.AskedWrongly;
import chargehand.cli.Command;
import chargehand.cli.Ended;
import chargehand.cli.Given;
import chargehand.cli.Option;
import chargehand.cli.Terminal;
import chargehand.cli.Usage;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;

/** Serves a shop's book. */
final class ServeCommand implements Command {
    private static final Option BOOK =
            Option.valued("--book", "FILE", "The shop's book; shop.book when left out, made when it is not there.");

    private final Terminal terminal;

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "serve",
                "",
                List.of(
                        "Serve a shop's book as pages, to this machine only.",
                        "",
                        "  ./chargehand serve --book kelderhaven.book",
                        "",
                        "Everything that was acknowledged is in the file, also after a power cut."),
                List.of(BOOK, Serving.PORT));
    }

    @Override
    public int run(Given given) {
        given.noWords();
        int port = Serving.port(given.find(Serving.PORT.name()));
        Path file = Path.of(given.find(BOOK.name()).orElse("shop.book"));
        NativeLibrary.unpackInto(Home.natives());
        try (SqliteBook book = SqliteBook.open(file)) {
            Desk desk = Desk.at(book, new ShopPlanner(), Clock.system(ZoneId.systemDefault()));
            Serving.serve(desk, port, terminal);
        } catch (BookUnusable unusable) {
            throw new AskedWrongly(String.valueOf(unusable.getMessage()), unusable);
        }
        return Ended.ANSWERED;
    }
}
