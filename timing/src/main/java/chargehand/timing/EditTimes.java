package chargehand.timing;

import chargehand.app.ShopPlanner;
import chargehand.book.demo.DemoShop;
import chargehand.book.sqlite.SqliteBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** From a keystroke in the field of a part's file to the changed drawing on the screen, in a real browser, every wait counted. */
final class EditTimes {
    private static final int KEYSTROKES = 12;
    private static final int WARM = 4;

    private EditTimes() {}

    static List<Measured> measured(Path root) throws IOException, InterruptedException {
        Optional<Path> browser = BrowserTab.installed();
        if (browser.isEmpty()) {
            return List.of(Measured.of("from a keystroke to the new drawing", "no browser on this machine"));
        }
        try (var scratch = new Scratch()) {
            Path book = scratch.folder().resolve("shop.book");
            try (SqliteBook filled = SqliteBook.open(book)) {
                new DemoShop(filled, new ShopPlanner(), Clock.systemUTC())
                        .fill(DemoWorkshop.texts(root.resolve("demo")));
            }
            try (ServedShop shop = ServedShop.start(root.resolve("chargehand"), book);
                    BrowserTab tab = BrowserTab.open(browser.get(), scratch.folder())) {
                return measured(shop, tab, root.resolve("demo").resolve("parts"));
            }
        }
    }

    private static List<Measured> measured(ServedShop shop, BrowserTab tab, Path parts)
            throws IOException, InterruptedException {
        tab.go(shop.address().resolve("/jobs/211/drawing").toString());
        var medians = new TreeMap<String, Double>();
        var all = new ArrayList<Double>();
        for (int round = 0; round < 2; round++) {
            for (Path part : files(parts)) {
                List<Double> seconds = keystrokes(tab, Files.readString(part));
                if (round > 0) {
                    all.addAll(seconds);
                    medians.put(part.getFileName().toString(), new Stopwatch(seconds, List.of()).median());
                }
            }
        }
        var slowest = medians.entrySet().stream()
                .max((one, other) -> Double.compare(one.getValue(), other.getValue()))
                .orElseThrow();
        var watch = new Stopwatch(all, List.of());
        return List.of(Measured.of("from a keystroke to the new drawing on the screen, demo parts", watch)
                .aim("150 ms")
                .beside("95 of 100 within " + Stopwatch.seconds(watch.within(0.95)) + "; slowest part "
                        + slowest.getKey() + " " + Stopwatch.seconds(slowest.getValue())));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** The seconds of each of some keystrokes that change the first size of a part a little, or its title where sizes are fractions. */
    private static List<Double> keystrokes(BrowserTab tab, String text) throws IOException, InterruptedException {
        tab.number("load(" + BrowserTab.quoted(text) + ")", SCRIPT);
        var seconds = new ArrayList<Double>();
        for (int key = 0; key < WARM + KEYSTROKES; key++) {
            double took = tab.number("keystroke()", SCRIPT) / 1e3;
            if (key >= WARM) {
                seconds.add(took);
            }
        }
        return seconds;
    }

    /** Types into the title and the first size of the file, as a keyboard would, and waits for the drawing to be painted. */
    private static final String SCRIPT = """
            const field = document.querySelector('#text');
            const seen = document.querySelector('#seen');
            const changed = (text) => new Promise((done) => {
                const begun = performance.now();
                new MutationObserver((changes, observer) => {
                    if (!seen.querySelector('svg')) return;
                    observer.disconnect();
                    requestAnimationFrame(() => setTimeout(() => done(performance.now() - begun)));
                }).observe(seen, { childList: true });
                field.value = text;
                field.dispatchEvent(new Event('input', { bubbles: true }));
            });
            const load = (text) => changed(text);
            const keystroke = () => {
                const size = /((?:length|thickness): *)(\\d+)(?:\\.(\\d+))?(?![\\d\\/ ])/;
                const next = (key, whole, part) =>
                    key + whole + '.' + String(Number((part ?? '0').padEnd(2, '0')) % 97 + 1).padStart(2, '0');
                return changed(size.test(field.value)
                    ? field.value.replace(size, (all, key, whole, part) => next(key, whole, part))
                    : field.value.replace(/^part: .*$/m, (title) => title.length < 60 ? title + '1' : 'part: Part'));
            };
            """;
}
