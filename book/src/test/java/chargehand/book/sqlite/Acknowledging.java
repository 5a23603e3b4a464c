package chargehand.book.sqlite;

import chargehand.book.Entered;
import chargehand.book.job.Job;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.use.TakeRequest;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/** A program of its own that takes requests without end and says each job's number once it is in the book. */
final class Acknowledging {
    private Acknowledging() {}

    public static void main(String[] arguments) {
        var written = new RequestAsWritten(
                Map.of("asset", "swing bridge", "wants", "locking pin bent", "asker", "bridge keeper"));
        try (SqliteBook book = SqliteBook.open(Path.of(arguments[0]))) {
            var take = new TakeRequest(book, Clock.systemUTC());
            while (take.take(written) instanceof Entered.Done<Job>(Job job)) {
                System.out.println(job.number());
            }
        }
    }
}
