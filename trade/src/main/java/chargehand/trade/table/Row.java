package chargehand.trade.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One row of a {@link Table}: its cells by the name of their column. */
public final class Row {
    private final String table;
    private final List<String> columns;
    private final List<String> cells;

    Row(String table, List<String> columns, List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalStateException(
                    table + " has a row of " + cells.size() + " cells under " + columns.size() + " columns: " + cells);
        }
        this.table = table;
        this.columns = columns;
        this.cells = List.copyOf(cells);
    }

    /** The names of the columns, in order. */
    public List<String> columns() {
        return columns;
    }

    /** The cell as it stands, empty where the table gives nothing; refuses a column the table does not have. */
    public String text(String column) {
        int at = columns.indexOf(column);
        if (at < 0) {
            throw new IllegalStateException("table " + table + " has no column '" + column + "', only " + columns);
        }
        return cells.get(at);
    }

    /** The number in a cell that must hold one. */
    public double number(String column) {
        return findNumber(column)
                .orElseThrow(() -> new IllegalStateException("table " + table + " has no " + column + " in " + cells));
    }

    /** The number in a cell, if it holds one. */
    public Optional<Double> findNumber(String column) {
        String text = text(column);
        return text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text));
    }

    /** The entries of a cell that lists several, parted by semicolons. */
    public List<String> listed(String column) {
        return Arrays.stream(text(column).split(";", -1))
                .map(String::trim)
                .filter(entry -> !entry.isEmpty())
                .toList();
    }
}
