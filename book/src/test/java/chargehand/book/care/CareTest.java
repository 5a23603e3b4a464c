package chargehand.book.care;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Entered;
import chargehand.book.Signed;
import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Request;
import chargehand.book.job.Stage;
import chargehand.book.job.Standing;
import chargehand.book.json.AnyRecord;
import chargehand.book.method.Basis;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.sqlite.SqliteBook;
import chargehand.part.yaml.PartFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CareTest {
    private static final JobNumber JOB = new JobNumber(214);
    private static final String PIN = """
            part: Locking pin
            unit: mm
            material: bright mild steel
            general: ±0.1
            outside:
              - round: 20
                length: 50
            """;

    @TempDir
    Path folder;

    private SqliteBook book;

    @BeforeEach
    void openBook() {
        book = SqliteBook.open(folder.resolve("book.sqlite"));
        Request request = new Request("swing bridge", "pin bent", "bridge keeper", 1, Optional.empty());
        Job job = new Job(JOB, request, LocalDate.of(2026, 3, 2), new Standing.At(Stage.ASKED_FOR), 1);
        Signed by = new Signed("lead hand", Instant.parse("2026-03-02T08:00:00Z"));
        Finding finding = (Finding) new AnyRecord(new Random(3)).of(Finding.class);
        book.enter(ledger -> {
            ledger.jobs().add(job);
            ledger.parts().add(new PartIssue(JOB, 1, "part: [", Face.FAULTY, by));
            ledger.parts().add(new PartIssue(JOB, 2, PIN, Face.of(PartFile.read(PIN)), by));
            ledger.methods().add(new MethodRecord(JOB, 1, new Basis("A", 2, 1, 0), finding, by));
        });
    }

    @AfterEach
    void closeBook() {
        book.close();
    }

    private List<Trouble> check() {
        return new CheckBook(book, book).check();
    }

    private void behindItsBack(String script) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + book.file());
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        }
    }

    @Test
    void book_thatIsWhole_hasNoTrouble() {
        assertThat(check()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "update job set stage = 'passed'                                             | job 214 | its moves lead",
                "drop trigger part_is_kept; update part set text = 'x: 1' where version = 2  | job 214, drawing 2 | read so now",
                "drop trigger method_is_kept; update method set finding = '{\"kind\":1}'     | job 214 | kind: should be a text",
                "drop trigger method_stays; drop trigger part_stays; delete from part        | the file | is not there",
                "insert into move values (214, 1, 'ready', 'asked for', '', 'x', '2026-03-02T08:00:00Z') | job 214 | begins at 'ready'",
            })
    void book_changedBehindItsBack_isFoundOut(String script, String where, String say) throws SQLException {
        behindItsBack(script);
        assertThat(check()).first().satisfies(trouble -> {
            assertThat(trouble.where()).isEqualTo(where);
            assertThat(trouble.say()).contains(say).endsWith(".");
        });
    }

    @Test
    void copy_ofABookInUse_isABookLikeAnyOther() {
        Path copy = folder.resolve("copy.sqlite");
        assertThat(new BackUp(book).to(copy)).isEqualTo(Entered.done(copy));
        book.enter(ledger -> ledger.jobs().replace(job().with(new Standing.At(Stage.NOT_WANTED))));
        try (SqliteBook copied = SqliteBook.open(copy)) {
            assertThat(new CheckBook(copied, copied).check()).isEmpty();
            assertThat(copied.read(ledger -> ledger.jobs().find(JOB))
                            .orElseThrow()
                            .stage())
                    .isEqualTo(Stage.ASKED_FOR);
            assertThat(copied.read(ledger -> ledger.jobs().list(JobQuery.words("locking")))
                            .total())
                    .isEqualTo(1);
        }
        assertThat(folder).isDirectoryNotContaining(file -> file.toString().endsWith(".part"));
    }

    private Job job() {
        return book.read(ledger -> ledger.jobs().find(JOB)).orElseThrow();
    }

    @Test
    void copy_overAFileOrIntoNowhere_isRefused() throws IOException {
        Path kept = Files.writeString(folder.resolve("kept.txt"), "not to be lost");
        for (Path wrong : List.of(kept, folder.resolve("nowhere").resolve("copy.sqlite"))) {
            assertThat(new BackUp(book).to(wrong)).isInstanceOf(Entered.Refused.class);
        }
        assertThat(kept).hasContent("not to be lost");
    }

    @Test
    void file_damaged_isToldAsSuch() throws IOException, SQLException {
        Path copy = folder.resolve("copy.sqlite");
        new BackUp(book).to(copy);
        damage(copy);
        try (SqliteBook damaged = SqliteBook.open(copy)) {
            assertThat(new CheckBook(damaged, damaged).check())
                    .isNotEmpty()
                    .allSatisfy(trouble -> assertThat(trouble.where()).isEqualTo("the file"));
        }
    }

    /** Blots out what stands in the table of drawings, leaving the head of the file alone. */
    private static void damage(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("part: Locking pin");
        Arrays.fill(bytes, at / 4096 * 4096, at, (byte) 0x55);
        Files.write(file, bytes);
    }
}
