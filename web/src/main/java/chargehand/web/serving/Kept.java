package chargehand.web.serving;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;

/**
 * Things that take a while to work out and never change for one key: those asked for last are kept, the others made again.
 * For many threads; two that ask at once for what is not kept may both make it.
 */
public final class Kept<K, V> {
    private final ReentrantLock lock = new ReentrantLock();
    private final Map<K, V> kept;

    /** @param most how many are kept */
    public Kept(int most) {
        this.kept = new LinkedHashMap<>(most, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** What belongs to a key, made now unless it is kept. */
    public V of(K key, Function<? super K, ? extends V> maker) {
        return find(key).orElseGet(() -> keep(key, maker.apply(key)));
    }

    private Optional<V> find(K key) {
        lock.lock();
        try {
            return Optional.ofNullable(kept.get(key));
        } finally {
            lock.unlock();
        }
    }

    private V keep(K key, V made) {
        lock.lock();
        try {
            kept.put(key, made);
        } finally {
            lock.unlock();
        }
        return made;
    }
}
