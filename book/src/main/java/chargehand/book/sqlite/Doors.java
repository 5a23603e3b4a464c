package chargehand.book.sqlite;

import chargehand.book.store.BookUnusable;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;

/** The ways into a book's file. */
final class Doors {
    /** How long one change waits for another program to finish its own (ms). */
    private static final int PATIENCE_MS = 5_000;

    private Doors() {}

    /** Opens the file for writing, making it if it is not there. Nothing is written by that. */
    static Connection toWrite(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setSynchronous(SynchronousMode.FULL);
        config.setTransactionMode(TransactionMode.IMMEDIATE);
        config.enforceForeignKeys(true);
        return open(config, file);
    }

    /** Has changes written to a log first, so that readers and the writer do not wait for each other. */
    static void keepLog(Connection writer, Path file) throws SQLException {
        try (Statement statement = writer.createStatement();
                ResultSet mode = statement.executeQuery("pragma journal_mode = wal")) {
            if (!mode.getString(1).equals("wal")) {
                throw new BookUnusable(
                        "The book " + file + " lies where no write-ahead log can be kept beside it; put it"
                                + " on a disk of this machine.");
            }
        }
    }

    /** Opens the file for reading only. */
    static Connection toRead(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        config.setTransactionMode(TransactionMode.DEFERRED);
        return open(config, file);
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MS);
        return config;
    }

    private static Connection open(SQLiteConfig config, Path file) throws SQLException {
        return config.createConnection("jdbc:sqlite:" + file.toAbsolutePath());
    }
}
