package chargehand.book.sqlite;

import chargehand.book.store.Book;
import chargehand.book.store.BookContract;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

final class SqliteBookTest extends BookContract {
    @TempDir
    Path folder;

    @Override
    protected Book open() {
        return SqliteBook.open(folder.resolve("book.sqlite"));
    }
}
