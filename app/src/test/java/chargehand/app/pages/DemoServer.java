package chargehand.app.pages;

import chargehand.app.ShopPlanner;
import chargehand.book.Entered;
import chargehand.book.demo.DemoShop;
import chargehand.book.demo.DemoTexts;
import chargehand.book.memory.MemoryBook;
import chargehand.book.use.Desk;
import chargehand.trade.sum.Sums;
import chargehand.web.Server;
import chargehand.web.serving.Counter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The demo shop, served from memory. */
record DemoServer(Server server, Desk desk) implements AutoCloseable {
    private static final Path DEMO = Path.of("..", "demo");

    static DemoServer start() {
        Clock clock = Clock.system(ZoneId.systemDefault());
        var book = new MemoryBook();
        var planner = new ShopPlanner();
        var filled = new DemoShop(book, planner, clock).fill(texts());
        if (filled instanceof Entered.Refused<DemoShop.Filled> refused) {
            throw new IllegalStateException("the demo's files are refused: " + refused.objections());
        }
        Desk desk = Desk.at(book, planner, clock);
        return new DemoServer(Server.start(new Counter(desk, Sums.load()), 0), desk);
    }

    private static DemoTexts texts() {
        return new DemoTexts(
                text(DEMO.resolve("jobs.yaml")),
                folder(DEMO.resolve("parts")),
                folder(DEMO.resolve("kit")),
                text(DEMO.resolve("rack.yaml")));
    }

    private static Map<String, String> folder(Path folder) {
        var files = new TreeMap<String, String>();
        try (Stream<Path> paths = Files.list(folder)) {
            paths.forEach(path -> files.put(path.getFileName().toString(), text(path)));
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
        return files;
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    String address(String path) {
        return server.address().resolve(path).toString();
    }

    @Override
    public void close() {
        server.close();
    }
}
