package chargehand.book.memory;

import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;

/** A book in memory. A change works on a copy of the pages, which takes their place when the change comes to its end. */
public final class MemoryBook implements Book {
    private final ReentrantLock writing = new ReentrantLock(true);
    private volatile Pages pages = Pages.empty();

    @Override
    public <T> T read(Function<Ledger, T> reading) {
        return reading.apply(pages.copy());
    }

    @Override
    public <T> T change(Function<Ledger, T> changing) {
        if (writing.isHeldByCurrentThread()) {
            throw new IllegalStateException("a change cannot be made within another");
        }
        writing.lock();
        try {
            Pages copy = pages.copy();
            T result = changing.apply(copy);
            pages = copy;
            return result;
        } finally {
            writing.unlock();
        }
    }

    @Override
    public void close() {
        // Nothing is held that would have to be let go.
    }
}
