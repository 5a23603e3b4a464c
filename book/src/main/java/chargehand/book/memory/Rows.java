package chargehand.book.memory;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Rows under a whole number each, in the order of the numbers.
 *
 * @param <R> what a row holds
 */
final class Rows<R> {
    private final NavigableMap<Integer, R> rows;

    Rows() {
        this(new TreeMap<>());
    }

    private Rows(NavigableMap<Integer, R> rows) {
        this.rows = rows;
    }

    Rows<R> copy() {
        return new Rows<>(new TreeMap<>(rows));
    }

    /** Adds a row under a number that none has yet. */
    Rows<R> add(int number, R row) {
        if (rows.putIfAbsent(number, row) != null) {
            throw new IllegalStateException("there is a row " + number + " already");
        }
        return this;
    }

    /** Puts a row in the place of the one there is. */
    void replace(int number, R row) {
        if (rows.replace(number, row) == null) {
            throw new IllegalStateException("there is no row " + number);
        }
    }

    Optional<R> find(int number) {
        return Optional.ofNullable(rows.get(number));
    }

    Optional<R> last() {
        return Optional.ofNullable(rows.lastEntry()).map(Map.Entry::getValue);
    }

    List<R> list() {
        return List.copyOf(rows.values());
    }
}
