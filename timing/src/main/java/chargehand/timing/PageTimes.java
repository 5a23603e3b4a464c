package chargehand.timing;

import chargehand.app.ShopPlanner;
import chargehand.book.Entered;
import chargehand.book.demo.DemoShop;
import chargehand.book.demo.DemoTexts;
import chargehand.book.job.JobNumber;
import chargehand.book.sqlite.SqliteBook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Pages of the demo's book as a browser gets them: the first after a start, and many by twenty tablets at once. */
final class PageTimes {
    private static final int STARTS = 9;
    private static final int TABLETS = 20;
    private static final int LOADS = 1_000;

    /** How long somebody looks at a page before asking for the next (ms): quick fingers. */
    private static final int LOOKED_AT_MILLIS = 1_000;

    private static final List<String> OF_A_JOB = List.of("", "/drawing", "/drawing.svg", "/method", "/machine");

    private final Path launcher;
    private final Path book;

    private PageTimes(Path launcher, Path book) {
        this.launcher = launcher;
        this.book = book;
    }

    static List<Measured> measured(Path root) throws IOException, ExecutionException, InterruptedException {
        try (var scratch = new Scratch()) {
            Path book = scratch.folder().resolve("shop.book");
            List<JobNumber> planned = filled(book, DemoWorkshop.texts(root.resolve("demo")));
            return new PageTimes(root.resolve("chargehand"), book).measured(pages(planned));
        }
    }

    private static List<JobNumber> filled(Path file, DemoTexts texts) {
        try (SqliteBook book = SqliteBook.open(file)) {
            return switch (new DemoShop(book, new ShopPlanner(), Clock.systemUTC()).fill(texts)) {
                case Entered.Done<DemoShop.Filled>(DemoShop.Filled filled) -> filled.ready();
                case Entered.Refused<DemoShop.Filled> refused ->
                    throw new IllegalStateException("the demo: " + refused.objections());
            };
        }
    }

    private static List<String> pages(List<JobNumber> planned) {
        var pages = new ArrayList<>(List.of("/", "/sums", "/kit"));
        planned.forEach(job -> OF_A_JOB.forEach(page -> pages.add("/jobs/" + job + page)));
        return pages;
    }

    private List<Measured> measured(List<String> pages) throws IOException, ExecutionException, InterruptedException {
        var measured = new ArrayList<Measured>();
        measured.add(Measured.of("serve: from the call to the end of the first page", starts())
                .aim("0.6 s"));
        try (ServedShop shop = ServedShop.start(launcher, book)) {
            shop.read("/");
            OptionalLong before = shop.memory();
            loads(shop, pages, pages.size());
            for (String page : OF_A_JOB) {
                List<String> alike = pages.stream()
                        .filter(each -> each.matches("/jobs/[0-9]+" + page))
                        .toList();
                measured.add(Measured.of("page /jobs/NUMBER" + page + ", of each planned job", alone(shop, alike)));
            }
            var loads = new Stopwatch(loads(shop, pages, LOADS), List.of());
            measured.add(Measured.of("a page with " + TABLETS + " tablets at it, each asking once a second", loads)
                    .beside("99 of 100 within " + Stopwatch.seconds(loads.within(0.99)) + " (aim 30 ms)"));
            shop.memory()
                    .ifPresent(bytes -> measured.add(Measured.of("memory after 1,000 page loads", megabytes(bytes))
                            .aim("250 MB")
                            .beside("after the first page: " + megabytes(before.orElse(0)))));
        }
        return measured;
    }

    private Stopwatch starts() throws IOException {
        var seconds = new ArrayList<Double>();
        for (int start = 0; start < STARTS; start++) {
            long begun = System.nanoTime();
            try (ServedShop shop = ServedShop.start(launcher, book)) {
                shop.read("/");
                seconds.add((System.nanoTime() - begun) / 1e9);
            }
        }
        return new Stopwatch(seconds, List.of());
    }

    /** Each of the pages three times with nobody else at the shop. */
    private static Stopwatch alone(ServedShop shop, List<String> pages) throws IOException {
        var seconds = new ArrayList<Double>();
        for (int load = 0; load < 3 * pages.size(); load++) {
            long begun = System.nanoTime();
            shop.read(pages.get(load % pages.size()));
            seconds.add((System.nanoTime() - begun) / 1e9);
        }
        return new Stopwatch(seconds, List.of());
    }

    /** The seconds of each of so many page loads, shared out between the tablets. */
    private static List<Double> loads(ServedShop shop, List<String> pages, int count)
            throws ExecutionException, InterruptedException {
        var seconds = new ArrayList<Double>();
        try (ExecutorService tablets = Executors.newFixedThreadPool(TABLETS)) {
            var asked = new ArrayList<Future<Double>>();
            for (int load = 0; load < count; load++) {
                String page = pages.get(load % pages.size());
                asked.add(tablets.submit(load(shop, page)));
            }
            for (Future<Double> one : asked) {
                seconds.add(one.get());
            }
        }
        return seconds;
    }

    private static Callable<Double> load(ServedShop shop, String page) {
        return () -> {
            long begun = System.nanoTime();
            shop.read(page);
            double took = (System.nanoTime() - begun) / 1e9;
            Thread.sleep(LOOKED_AT_MILLIS);
            return took;
        };
    }

    private static String megabytes(long bytes) {
        return String.format(Locale.ROOT, "%.0f MB", bytes / 1e6);
    }
}
