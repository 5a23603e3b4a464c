package chargehand.cli;

import java.util.ArrayList;
import java.util.List;

/** Plain text for the terminal: headings, lines beneath them, and columns; long lines are broken between words. */
final class TextPage {
    private static final int WIDTH = 100;
    private static final String INDENT = "  ";
    private static final String GAP = "   ";

    private final StringBuilder text = new StringBuilder();

    void line(String line) {
        broken("", "", line);
    }

    void heading(String heading) {
        text.append('\n').append(heading).append('\n');
    }

    void indented(String line) {
        broken(INDENT, INDENT, line);
    }

    /** Rows of cells as columns; the last column is broken between words and keeps its place. */
    void rows(List<List<String>> rows) {
        List<Integer> widths = widths(rows);
        for (List<String> row : rows) {
            var head = new StringBuilder(INDENT);
            int at = INDENT.length();
            for (int column = 0; column < row.size() - 1; column++) {
                String cell = row.get(column);
                head.append(cell)
                        .append(" ".repeat(widths.get(column) - width(cell)))
                        .append(GAP);
                at += widths.get(column) + GAP.length();
            }
            broken(head.toString(), " ".repeat(at), row.isEmpty() ? "" : row.getLast());
        }
    }

    String text() {
        return text.toString();
    }

    private static List<Integer> widths(List<List<String>> rows) {
        var widths = new ArrayList<Integer>();
        for (List<String> row : rows) {
            for (int column = 0; column < row.size(); column++) {
                if (column == widths.size()) {
                    widths.add(0);
                }
                widths.set(column, Math.max(widths.get(column), width(row.get(column))));
            }
        }
        return widths;
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }

    private void broken(String first, String later, String line) {
        var built = new StringBuilder(first);
        boolean begun = false;
        for (String word : line.split(" ", -1)) {
            if (begun && width(built.toString()) + 1 + width(word) > WIDTH) {
                text.append(built.toString().stripTrailing()).append('\n');
                built = new StringBuilder(later);
                begun = false;
            }
            built.append(begun ? " " : "").append(word);
            begun = true;
        }
        text.append(built.toString().stripTrailing()).append('\n');
    }
}
