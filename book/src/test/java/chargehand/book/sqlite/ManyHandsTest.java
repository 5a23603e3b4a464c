package chargehand.book.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Entered;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobQuery;
import chargehand.book.job.RequestAsWritten;
import chargehand.book.use.TakeRequest;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ManyHandsTest {
    private static final int REQUESTS = 60;
    private static final RequestAsWritten WRITTEN =
            new RequestAsWritten(Map.of("asset", "capstan", "wants", "two unions", "asker", "deck crew"));

    @TempDir
    Path folder;

    @Test
    void requests_takenAtOnceThroughTwoDoors_haveANumberEach() throws ExecutionException, InterruptedException {
        Path file = folder.resolve("book.sqlite");
        try (SqliteBook one = SqliteBook.open(file);
                SqliteBook other = SqliteBook.open(file);
                var hands = Executors.newVirtualThreadPerTaskExecutor()) {
            List<TakeRequest> doors =
                    List.of(new TakeRequest(one, Clock.systemUTC()), new TakeRequest(other, Clock.systemUTC()));
            List<Future<JobNumber>> taken = IntStream.range(0, REQUESTS)
                    .mapToObj(index -> hands.submit(() -> take(doors.get(index % 2))))
                    .toList();
            Set<JobNumber> numbers = new HashSet<>();
            for (Future<JobNumber> number : taken) {
                numbers.add(number.get());
            }
            assertThat(numbers).hasSize(REQUESTS);
            assertThat(one.read(ledger -> ledger.jobs().list(JobQuery.words("capst")))
                            .total())
                    .isEqualTo(REQUESTS);
        }
    }

    private static JobNumber take(TakeRequest door) {
        return ((Entered.Done<Job>) door.take(WRITTEN)).value().number();
    }
}
