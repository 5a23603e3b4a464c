package chargehand.book.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.book.job.JobLine;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobQuery;
import chargehand.book.store.BookUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class EditionsTest {
    @TempDir
    Path folder;

    private Path file(String name) {
        return folder.resolve(name);
    }

    @Test
    void book_thatIsNew_hasTheLatestEdition() throws SQLException {
        SqliteBook.open(file("book.sqlite")).close();
        assertThat(figure(file("book.sqlite"), "pragma user_version"))
                .isEqualTo(Editions.latest())
                .isGreaterThan(1);
    }

    @Test
    void book_ofTheFirstEdition_isBroughtUpToDateWithAllItHolds() throws SQLException {
        Path old = file("old.sqlite");
        try (Connection writer = Doors.toWrite(old)) {
            new Editions(old).bring(writer, 1);
        }
        run(old, """
                insert into job values (214, 'north sluice', 'spindle bent', 'sluice keeper', 1, null, '2026-03-02',
                  'being drawn', null, null, 1);
                insert into part values (214, 1, 'first', 1, 'Pin', '', 'A', 'steel', 'lead hand', '2026-03-02T08:00:00Z');
                insert into part values (214, 2, 'then', 1, 'Spindle', '', 'A', 'bronze', 'lead hand', '2026-03-02T09:00:00Z');
                """);
        try (SqliteBook book = SqliteBook.open(old)) {
            assertThat(found(book, "keeper spindle bronze")).containsExactly(new JobNumber(214));
            assertThat(found(book, "steel")).isEmpty();
        }
        assertThat(schema(old)).isEqualTo(schemaOfANewBook());
    }

    private static List<JobNumber> found(SqliteBook book, String words) {
        return book.read(ledger -> ledger.jobs().list(JobQuery.words(words))).lines().stream()
                .map(JobLine::job)
                .map(job -> job.number())
                .toList();
    }

    private Set<String> schemaOfANewBook() throws SQLException {
        SqliteBook.open(file("new.sqlite")).close();
        return schema(file("new.sqlite"));
    }

    @Test
    void book_ofANewerEdition_isRefusedAndLeftAlone() throws SQLException {
        Path newer = file("newer.sqlite");
        SqliteBook.open(newer).close();
        run(newer, "pragma user_version = 99");
        assertThatThrownBy(() -> SqliteBook.open(newer))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining(newer.toString())
                .hasMessageContaining("newer Chargehand");
        assertThat(figure(newer, "pragma user_version")).isEqualTo(99);
    }

    @Test
    void database_ofAnotherProgram_isRefusedAndLeftAlone() throws SQLException, IOException {
        Path other = file("other.sqlite");
        run(other, "create table tides (at text)");
        byte[] before = Files.readAllBytes(other);
        assertThatThrownBy(() -> SqliteBook.open(other))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining(other.toString())
                .hasMessageContaining("not a Chargehand book");
        assertThat(other).hasBinaryContent(before);
    }

    @Test
    void file_thatIsNoDatabase_isRefusedAndLeftAlone() throws IOException {
        Path letter = Files.writeString(file("letter.txt"), "Dear lead hand, the spindle is bent again. ".repeat(50));
        assertThatThrownBy(() -> SqliteBook.open(letter))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining(letter.toString());
        assertThat(letter).content().startsWith("Dear lead hand");
    }

    @Test
    void folder_thatIsNotThere_isRefused() {
        assertThatThrownBy(() -> SqliteBook.open(file("nowhere").resolve("book.sqlite")))
                .isInstanceOf(BookUnusable.class)
                .hasMessageContaining("nowhere");
    }

    @Test
    void entries_behindTheBooksBack_areNotAltered() throws SQLException {
        Path kept = file("kept.sqlite");
        SqliteBook.open(kept).close();
        run(kept, """
                insert into job values (1, 'tug', 'leaks', 'engine room', 1, null, '2026-03-02', 'in hand', null, null, 1);
                insert into move values (1, 1, 'ready', 'in hand', '', 'learner', '2026-03-02T08:00:00Z');
                """);
        for (String deed : List.of("update move set who = 'lead hand'", "delete from move", "delete from job")) {
            assertThatThrownBy(() -> run(kept, deed))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("only added");
        }
    }

    private static void run(Path file, String script) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        }
    }

    private static int figure(Path file, String question) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet answer = statement.executeQuery(question)) {
            return answer.getInt(1);
        }
    }

    private static Set<String> schema(Path file) throws SQLException {
        var schema = new TreeSet<String>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select sql from sqlite_schema where sql is not null")) {
            while (row.next()) {
                schema.add(row.getString(1));
            }
        }
        return schema;
    }
}
