package chargehand.paper.sheet;

import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Puts rows on as many pages as they need, each page begun by its heading; a row is never broken. */
final class Flow {
    /** The most that the head of a page takes (mm). */
    private static final double HEADING = 35;

    private final BiFunction<Canvas, Boolean, Double> heading;
    private final List<Canvas> pages = new ArrayList<>();
    private double y;

    /** @param heading draws the head of a page, told whether it goes on from one before, and says where rows may begin */
    Flow(BiFunction<Canvas, Boolean, Double> heading) {
        this.heading = heading;
        turnPage();
    }

    private void turnPage() {
        Canvas page = new Canvas();
        y = heading.apply(page, !pages.isEmpty());
        pages.add(page);
    }

    Flow add(Row row) {
        boolean fits = y + row.height() <= Page.BOTTOM;
        if (!fits && row.height() <= Page.BOTTOM - Page.TOP) {
            turnPage();
        }
        pages.getLast().place(row.picture(), Point.of(Page.LEFT, y));
        y += row.height();
        return this;
    }

    /** Rows that belong together, all on one page where they fit on one. */
    Flow together(List<Row> rows) {
        double height = rows.stream().mapToDouble(Row::height).sum();
        if (y + height > Page.BOTTOM && height <= Page.BOTTOM - Page.TOP - HEADING) {
            turnPage();
        }
        return addAll(rows);
    }

    Flow addAll(List<Row> rows) {
        rows.forEach(this::add);
        return this;
    }

    List<Canvas> pages() {
        return List.copyOf(pages);
    }
}
