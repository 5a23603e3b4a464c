package chargehand.trade.sum;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Several values that belong together, read and typed: one reading of a list, one length of stock. */
public final class Entry {
    private final Map<Column<?>, Object> values;

    Entry(Map<Column<?>, Object> values) {
        this.values = new HashMap<>(values);
    }

    /** The value of a column that every entry has. */
    public <T> T get(Column<T> column) {
        return find(column).orElseThrow(() -> new IllegalStateException("no '" + column.name() + "' in this entry"));
    }

    /** The value of the column, if the entry has one. */
    @SuppressWarnings("unchecked") // a value is only ever stored under the column whose kind read it
    public <T> Optional<T> find(Column<T> column) {
        return Optional.ofNullable((T) values.get(column));
    }
}
