package chargehand.book.store;

import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The shop's book. It is read and changed a transaction at a time: a change is wholly kept when {@link #change} returns and
 * not at all when it throws, whatever happens to the machine afterwards.
 */
public interface Book extends AutoCloseable {
    /** Reads at one moment: nothing that others change meanwhile is seen. */
    <T> T read(Function<Ledger, T> reading);

    /** Changes; one change waits for another, and none is made within another. */
    <T> T change(Function<Ledger, T> changing);

    /** As {@link #change}, where there is nothing to hand back. */
    default void enter(Consumer<Ledger> changing) {
        change(ledger -> {
            changing.accept(ledger);
            return true;
        });
    }

    @Override
    void close();
}
