package chargehand.book.sqlite;

import chargehand.book.care.Storage;
import chargehand.book.store.Book;
import chargehand.book.store.BookUnusable;
import chargehand.book.store.Ledger;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** A book in one SQLite file. */
public final class SqliteBook implements Book, Storage {
    private final Path file;
    private final Handle writer;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final Readers readers;

    private SqliteBook(Path file, Connection writer) {
        this.file = file;
        this.writer = Jdbi.create(() -> writer).open();
        this.readers = new Readers(file);
    }

    /**
     * Opens a book, making an empty one if there is no such file and bringing an older one up to date.
     *
     * @throws BookUnusable if the file is no book, belongs to a newer program, or cannot be read or written
     */
    public static SqliteBook open(Path file) {
        try {
            Connection writer = Doors.toWrite(file);
            return opened(file, writer);
        } catch (SQLException broken) {
            throw unusable(file, broken);
        }
    }

    private static SqliteBook opened(Path file, Connection writer) throws SQLException {
        try {
            new Editions(file).bring(writer);
            Doors.keepLog(writer, file);
            return new SqliteBook(file, writer);
        } catch (SQLException | BookUnusable refused) {
            writer.close();
            throw refused;
        }
    }

    @Override
    public Path file() {
        return file;
    }

    @Override
    public void copyTo(Path copy) {
        try {
            Copying.copy(file, copy);
        } catch (SQLException | IOException broken) {
            throw new BookUnusable("The book " + file + " cannot be copied to " + copy + ": " + broken, broken);
        }
    }

    @Override
    public List<String> faults() {
        return Wholeness.faults(file);
    }

    @Override
    public <T> T read(Function<Ledger, T> reading) {
        try {
            return readers.read(handle -> reading.apply(new SqliteLedger(handle)));
        } catch (JdbiException broken) {
            throw unusable(file, broken);
        }
    }

    @Override
    public <T> T change(Function<Ledger, T> changing) {
        if (writing.isHeldByCurrentThread()) {
            throw new IllegalStateException("a change cannot be made within another");
        }
        writing.lock();
        try {
            return writer.inTransaction(handle -> changing.apply(new SqliteLedger(handle)));
        } catch (JdbiException broken) {
            throw unusable(file, broken);
        } finally {
            writing.unlock();
        }
    }

    private static BookUnusable unusable(Path file, Exception broken) {
        return new BookUnusable("The book " + file + " cannot be read or written: " + broken.getMessage(), broken);
    }

    @Override
    public void close() {
        readers.close();
        writing.lock();
        try {
            writer.close();
        } finally {
            writing.unlock();
        }
    }
}
