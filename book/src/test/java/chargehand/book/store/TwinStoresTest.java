package chargehand.book.store;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.JobQuery.Order;
import chargehand.book.job.Request;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.memory.MemoryBook;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.sqlite.SqliteBook;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The search of the book on disk beside the plain one in memory: the same jobs, the same questions, the same answers. */
final class TwinStoresTest {
    private static final long SEED = 214;
    private static final int JOBS = 150;
    private static final int QUESTIONS = 300;
    private static final List<String> WORDS = List.of(
            "sluice",
            "sluice-gate",
            "spindle",
            "Spindel",
            "déur",
            "deur",
            "Ø20",
            "13/16",
            "G3/8",
            "union",
            "unions",
            "bush",
            "bushing",
            "capstan",
            "kapitän",
            "M20x2.5",
            "it's",
            "x");

    private final Random chance = new Random(SEED);

    @TempDir
    Path folder;

    @Test
    void questions_askedOfBoth_haveTheSameAnswers() {
        try (Book memory = new MemoryBook();
                Book disk = SqliteBook.open(folder.resolve("book.sqlite"))) {
            List<Job> jobs = IntStream.rangeClosed(1, JOBS).mapToObj(this::job).toList();
            List<PartIssue> parts = jobs.stream()
                    .filter(job -> chance.nextBoolean())
                    .map(this::drawing)
                    .toList();
            Stream.of(memory, disk)
                    .forEach(book -> book.enter(ledger -> {
                        jobs.forEach(ledger.jobs()::add);
                        parts.forEach(ledger.parts()::add);
                    }));
            int found = 0;
            for (int question = 0; question < QUESTIONS; question++) {
                JobQuery query = query();
                JobPage plain = memory.read(ledger -> ledger.jobs().list(query));
                JobPage indexed = disk.read(ledger -> ledger.jobs().list(query));
                assertThat(indexed).isEqualTo(plain);
                found += plain.total();
            }
            assertThat(found).as("the questions find something").isGreaterThan(QUESTIONS);
        }
    }

    private Job job(int number) {
        LocalDate day = LocalDate.of(2026, 3, 2).plusDays(chance.nextInt(60));
        Request request = new Request(
                words(2), words(4), words(1), 1, chance.nextInt(3) > 0 ? Optional.of(day) : Optional.empty());
        Stage stage = one(Arrays.asList(Stage.values()));
        Standing standing =
                stage == Stage.STOPPED ? new Standing.Stopped(words(2), Stage.READY) : new Standing.At(stage);
        return new Job(new JobNumber(number), request, LocalDate.of(2026, 3, 1), standing, 1);
    }

    private PartIssue drawing(Job job) {
        var face = new Face(true, words(2), words(1), "A", words(1));
        Signed by = new Signed("lead hand", Instant.EPOCH);
        return new PartIssue(job.number(), 1, "…", face, by);
    }

    private JobQuery query() {
        String whole = words(chance.nextInt(3));
        String text = whole.substring(0, whole.length() - chance.nextInt(Math.min(3, whole.length() + 1)));
        Set<Stage> stages = Arrays.stream(Stage.values())
                .filter(stage -> chance.nextInt(4) > 0)
                .collect(Collectors.toSet());
        return new JobQuery(text, stages, one(List.of(Order.values())), 1 + chance.nextInt(3), 1 + chance.nextInt(40));
    }

    private String words(int count) {
        return IntStream.range(0, count).mapToObj(index -> one(WORDS)).collect(Collectors.joining(" "));
    }

    private <T> T one(List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }
}
