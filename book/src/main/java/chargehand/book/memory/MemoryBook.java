package chargehand.book.memory;

import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.util.function.Function;

/** A book in memory. A change works on a copy of the pages, which takes their place when the change comes to its end. */
public final class MemoryBook implements Book {
    private volatile Pages pages = Pages.empty();

    @Override
    public <T> T read(Function<Ledger, T> reading) {
        return reading.apply(pages.copy());
    }

    @Override
    public synchronized <T> T change(Function<Ledger, T> changing) {
        Pages copy = pages.copy();
        T result = changing.apply(copy);
        pages = copy;
        return result;
    }

    @Override
    public void close() {
        // Nothing is held that would have to be let go.
    }
}
