package chargehand.trade.table;

import chargehand.trade.sum.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A published table read from a CSV resource. Lines beginning with {@code #} are remarks; the first of them reads
 * {@code # source: …}. The next line names the columns, and every further line is a row with as many cells. A cell that
 * holds a comma is put in double quotes.
 */
public final class Table {
    private static final String SOURCE = "# source:";

    private final Source source;
    private final List<Row> rows;

    private Table(Source source, List<Row> rows) {
        this.source = source;
        this.rows = List.copyOf(rows);
    }

    /**
     * Reads the table lying beside a class.
     *
     * @throws IllegalStateException when the resource is missing, has no source line, or a row does not fit its columns
     */
    public static Table read(Class<?> owner, String resource) {
        try (InputStream in = owner.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no table " + resource + " beside " + owner.getName());
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return parse(resource, text.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + resource, e);
        }
    }

    private static Table parse(String name, List<String> lines) {
        if (lines.isEmpty() || !lines.getFirst().startsWith(SOURCE)) {
            throw new IllegalStateException("table " + name + " does not begin with '" + SOURCE + "'");
        }
        var source = new Source(lines.getFirst().substring(SOURCE.length()).trim());
        List<String> body = lines.stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        List<String> columns = cells(body.getFirst());
        var rows = new ArrayList<Row>();
        for (String line : body.subList(1, body.size())) {
            rows.add(new Row(name, columns, cells(line)));
        }
        return new Table(source, rows);
    }

    private static List<String> cells(String line) {
        var cells = new ArrayList<String>();
        var cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().trim());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().trim());
        return cells;
    }

    /** Where the figures come from. */
    public Source source() {
        return source;
    }

    /** The rows in the order of the file. */
    public List<Row> rows() {
        return rows;
    }
}
