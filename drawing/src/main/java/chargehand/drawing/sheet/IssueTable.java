package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.part.DrawingIssue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The table of issues on top of the title block, the first issue lowest so that there is always room for the next.
 *
 * @param rows from the top down, none where no table is kept
 */
record IssueTable(List<Row> rows) {
    private static final Lettering LETTERING = Lettering.height(2.5);
    private static final Lettering CAPTION = Lettering.height(1.8);
    private static final List<Double> WIDTHS = List.of(14.0, 36.0, 82.0, 26.0, 22.0);
    private static final List<String> CAPTIONS = List.of("Issue", "Where", "Changed", "Date", "By");
    private static final double HEAD = 3.6;
    private static final double LEAST = 5;
    private static final double INSET = 1.5;

    /** So many issues are told in full; earlier ones only by their letters. */
    private static final int MOST = 6;

    IssueTable {
        rows = List.copyOf(rows);
    }

    /**
     * One issue.
     *
     * @param cells as wide as {@link #WIDTHS}, each in as many lines as it needs
     */
    record Row(List<List<String>> cells) {
        static Row of(List<String> cells) {
            List<List<String>> wrapped = new ArrayList<>();
            for (int i = 0; i < cells.size(); i++) {
                wrapped.add(LETTERING.wrap(cells.get(i), WIDTHS.get(i) - 2 * INSET));
            }
            return new Row(wrapped);
        }

        double height() {
            int lines = cells.stream().mapToInt(List::size).max().orElse(1);
            return LEAST + (Math.max(1, lines) - 1) * LETTERING.linePitch();
        }
    }

    static IssueTable of(List<DrawingIssue> issues) {
        List<Row> rows = new ArrayList<>();
        int earlier = Math.max(0, issues.size() - MOST);
        for (DrawingIssue issue : issues.subList(earlier, issues.size()).reversed()) {
            rows.add(Row.of(List.of(
                    issue.letter(),
                    issue.at().orElse(""),
                    issue.what(),
                    issue.date().toString(),
                    issue.by())));
        }
        if (earlier > 0) {
            String letters = issues.subList(0, earlier).stream()
                    .map(DrawingIssue::letter)
                    .collect(Collectors.joining(", "));
            rows.add(Row.of(List.of("", "", "Earlier issues: " + letters + ".", "", "")));
        }
        return new IssueTable(rows);
    }

    /** How high it is (mm). */
    double height() {
        return rows.isEmpty()
                ? 0
                : HEAD + rows.stream().mapToDouble(Row::height).sum();
    }

    /** Draws it from its upper left corner. */
    void draw(Canvas canvas, Point corner) {
        Point at = corner;
        for (Row row : rows) {
            cells(canvas, at, row);
            at = at.moved(0, row.height());
        }
        if (!rows.isEmpty()) {
            captions(canvas, at);
            canvas.box(LineStyle.WIDE, corner, TitleBlock.WIDTH, height());
        }
    }

    private static void cells(Canvas canvas, Point corner, Row row) {
        double x = corner.x();
        for (int i = 0; i < WIDTHS.size(); i++) {
            canvas.box(LineStyle.NARROW, new Point(x, corner.y()), WIDTHS.get(i), row.height());
            double y = corner.y() + LEAST - 1.25;
            for (String line : row.cells.get(i)) {
                Lines.words(canvas, LETTERING, new Point(x + INSET, y), line);
                y += LETTERING.linePitch();
            }
            x += WIDTHS.get(i);
        }
    }

    private static void captions(Canvas canvas, Point corner) {
        double x = corner.x();
        for (int i = 0; i < WIDTHS.size(); i++) {
            canvas.box(LineStyle.NARROW, new Point(x, corner.y()), WIDTHS.get(i), HEAD);
            canvas.words(CAPTION, new Point(x + 1, corner.y() + 2.6), CAPTIONS.get(i));
            x += WIDTHS.get(i);
        }
    }
}
