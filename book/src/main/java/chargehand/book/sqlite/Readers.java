package chargehand.book.sqlite;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** A few connections for reading, opened when they are first needed and then kept. */
final class Readers implements AutoCloseable {
    /** As many as read at once on a small machine without waiting for each other. */
    private static final int MOST = 4;

    private final Path file;
    private final Semaphore places = new Semaphore(MOST, true);
    private final Deque<Handle> idle = new ArrayDeque<>();

    Readers(Path file) {
        this.file = file;
    }

    <T> T read(Function<Handle, T> reading) {
        places.acquireUninterruptibly();
        try {
            Handle handle = take();
            try {
                return handle.inTransaction(reading::apply);
            } finally {
                give(handle);
            }
        } finally {
            places.release();
        }
    }

    private Handle take() {
        synchronized (idle) {
            Handle handle = idle.poll();
            return handle == null ? Jdbi.create(() -> Doors.toRead(file)).open() : handle;
        }
    }

    private void give(Handle handle) {
        synchronized (idle) {
            idle.push(handle);
        }
    }

    @Override
    public void close() {
        places.acquireUninterruptibly(MOST);
        synchronized (idle) {
            idle.forEach(Handle::close);
            idle.clear();
        }
    }
}
