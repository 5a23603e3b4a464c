package chargehand.book.memory;

import chargehand.book.store.Book;
import chargehand.book.store.BookContract;

final class MemoryBookTest extends BookContract {
    @Override
    protected Book open() {
        return new MemoryBook();
    }
}
