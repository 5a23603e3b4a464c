package chargehand.timing;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Request;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.sqlite.SqliteBook;
import chargehand.book.use.JobBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A book as a shop has after many years: opened, turned and searched. */
final class BookTimes {
    private static final int JOBS = 50_000;
    private static final LocalDate FIRST_DAY = LocalDate.of(1990, 1, 2);
    private static final int JOBS_A_DAY = 4;

    private static final List<String> ASSETS =
            List.of("North sluice", "Steam tug", "Slipway winch", "Grab dredger", "Ferry", "Dock crane", "Pilot boat");
    private static final List<String> WANTS = List.of(
            "spindle worn, thread gone",
            "bush worn oval",
            "studs wasted in the shank",
            "pin scored and bent",
            "union weeps at the cone",
            "shim packing to replace",
            "roller seized on its shaft",
            "ram scored along one side",
            "pinion keyway chewed");
    private static final List<String> ASKERS = List.of("engine room", "slip master", "sluice keeper", "crane driver");

    private BookTimes() {}

    static List<Measured> measured() throws Exception {
        try (var scratch = new Scratch()) {
            return measured(scratch.folder().resolve("shop.book"));
        }
    }

    private static List<Measured> measured(Path file) throws Exception {
        try (SqliteBook book = SqliteBook.open(file)) {
            book.enter(ledger -> {
                for (int number = 1; number <= JOBS; number++) {
                    ledger.jobs().add(job(number));
                }
            });
        }
        Stopwatch opened = Stopwatch.of(2, 9, () -> {
            try (SqliteBook book = SqliteBook.open(file)) {
                return found(book, JobQuery.all(), JOBS);
            }
        });
        try (SqliteBook book = SqliteBook.open(file)) {
            int both = JOBS / (ASSETS.size() * WANTS.size());
            return List.of(
                    Measured.of("book of 50,000 jobs: opened, its first page read, closed", opened)
                            .aim("0.1 s"),
                    search(book, "two words that 1 job in 63 has", "sluice spin", both),
                    search(book, "one word that 1 job in 7 has", "sluice", JOBS / ASSETS.size()),
                    search(book, "a job's number", "31415", 1),
                    search(book, "a word that none has", "locomotive", 0));
        }
    }

    private static Measured search(SqliteBook book, String what, String words, int least) throws Exception {
        Stopwatch watch = Stopwatch.of(5, 31, () -> found(book, JobQuery.words(words), least));
        return Measured.of("book of 50,000 jobs: search for " + what, watch).aim("0.1 s");
    }

    private static JobPage found(SqliteBook book, JobQuery query, int least) {
        JobPage page = new JobBook(book).list(query);
        if (page.total() < least || page.lines().size() != Math.min(page.total(), query.size())) {
            throw new IllegalStateException("found " + page.total() + " for '" + query.text() + "'");
        }
        return page;
    }

    private static Job job(int number) {
        String wants = WANTS.get(number % WANTS.size()) + ", " + number % 101 + " to replace";
        var request = new Request(
                ASSETS.get(number % ASSETS.size()),
                wants,
                ASKERS.get(number % ASKERS.size()),
                1 + number % 30,
                Optional.empty());
        LocalDate day = FIRST_DAY.plusDays(number / JOBS_A_DAY);
        return new Job(new JobNumber(number), request, day, new Standing.At(Stage.ASKED_FOR), 1);
    }
}
