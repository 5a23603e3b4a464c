package chargehand.book.sqlite;

import chargehand.book.store.BookUnusable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Optional;

/**
 * Brings a book's file to the edition of the tables that this program works with. The scripts are numbered without gaps, each
 * is run once and wholly or not at all, and a script that has been in use is never changed: what is to change is a new one.
 */
final class Editions {
    /** The mark in a file's head that it is a book: "CHBK". */
    private static final int MARK = 0x4348424b;

    private final Path file;

    Editions(Path file) {
        this.file = file;
    }

    /** Runs the scripts that the file has not seen. */
    void bring(Connection writer) throws SQLException {
        bring(writer, latest());
    }

    /** Runs the scripts up to one edition. */
    void bring(Connection writer, int wanted) throws SQLException {
        refuseStrangers(writer);
        int edition = figure(writer, "pragma user_version");
        if (edition > wanted) {
            throw new BookUnusable("The book " + file + " was last used with a newer Chargehand (edition " + edition
                    + " of its tables; this one knows up to " + wanted + "). Use the newer one; nothing was changed.");
        }
        for (int next = edition + 1; next <= wanted; next++) {
            run(writer, next);
        }
    }

    /** The number of the last script there is. */
    static int latest() {
        int edition = 1;
        while (script(edition + 1).isPresent()) {
            edition++;
        }
        return edition;
    }

    private void refuseStrangers(Connection writer) throws SQLException {
        boolean empty = figure(writer, "select count(*) from sqlite_schema") == 0;
        if (!empty && figure(writer, "pragma application_id") != MARK) {
            throw new BookUnusable(
                    "The file " + file + " is a database but not a Chargehand book; nothing was changed.");
        }
    }

    private static void run(Connection writer, int edition) throws SQLException {
        String script = script(edition).orElseThrow(() -> new IllegalStateException("there is no script " + edition));
        writer.setAutoCommit(false);
        try (Statement statement = writer.createStatement()) {
            statement.executeUpdate(script);
            statement.executeUpdate("pragma application_id = " + MARK);
            statement.executeUpdate("pragma user_version = " + edition);
            writer.commit();
        } finally {
            writer.setAutoCommit(true);
        }
    }

    private static Optional<String> script(int edition) {
        try (InputStream script = Editions.class.getResourceAsStream(String.format(Locale.ROOT, "%03d.sql", edition))) {
            return script == null
                    ? Optional.empty()
                    : Optional.of(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new BookUnusable("The program's own script " + edition + " cannot be read.", broken);
        }
    }

    private static int figure(Connection connection, String question) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet answer = statement.executeQuery(question)) {
            return answer.next() ? answer.getInt(1) : 0;
        }
    }
}
