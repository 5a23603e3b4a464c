package chargehand.paper.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/** The plain rows that sheets are put together from. */
final class Rows {
    private static final double TICK = 7;
    private static final double PAD = 2;

    private Rows() {}

    /** A sub-heading. */
    static Row heading(String words) {
        var canvas = new Canvas();
        canvas.words(Type.STRONG, Point.of(0, 7), words);
        return row(canvas, 9.5, words);
    }

    /** A paragraph in these letters. */
    static Row paragraph(Lettering letters, String words) {
        var canvas = new Canvas();
        double end = canvas.paragraph(letters, Point.of(0, letters.capitals() + 1), Page.TEXT_WIDTH, words);
        return row(canvas, end - letters.capitals(), words);
    }

    /** A line with a box to tick at its right. */
    static Row tick(String words) {
        var canvas = new Canvas();
        double end =
                canvas.paragraph(Type.BODY, Point.of(0, Type.BODY.capitals() + PAD), Page.TEXT_WIDTH - TICK - 4, words);
        double height = Math.max(TICK + 2, end - Type.BODY.capitals());
        canvas.box(LineStyle.WIDE, Point.of(Page.TEXT_WIDTH - TICK, 1), TICK, TICK);
        return row(canvas, height, words);
    }

    /** Short things so many side by side, each with its box. */
    static List<Row> ticks(List<String> words, int abreast) {
        var rows = new ArrayList<Row>();
        for (int i = 0; i < words.size(); i += abreast) {
            rows.add(ticked(words.subList(i, Math.min(i + abreast, words.size())), abreast));
        }
        return rows;
    }

    private static Row ticked(List<String> words, int abreast) {
        var canvas = new Canvas();
        double width = Page.TEXT_WIDTH / abreast;
        double lowest = 0;
        for (int i = 0; i < words.size(); i++) {
            double left = i * width;
            canvas.box(LineStyle.WIDE, Point.of(left, 1), TICK, TICK);
            Point at = Point.of(left + TICK + 3, Type.BODY.capitals() + PAD);
            lowest = Math.max(lowest, canvas.paragraph(Type.BODY, at, width - TICK - 6, words.get(i)));
        }
        return row(canvas, Math.max(TICK + 2, lowest - Type.BODY.capitals()), String.join(", ", words));
    }

    /** Name and value side by side. */
    static Row fact(String name, String value) {
        var canvas = new Canvas();
        double indent = 38;
        canvas.words(Type.SMALL, Point.of(0, Type.BODY.capitals() + 1), name);
        double end = canvas.paragraph(
                Type.BODY, Point.of(indent, Type.BODY.capitals() + 1), Page.TEXT_WIDTH - indent, value);
        return row(canvas, Math.max(7, end - Type.BODY.capitals() + 1), name);
    }

    /** A caution: a bar at its left and the word, since colour does not copy. */
    static Row care(String words) {
        return barred(Type.BODY, "Care: " + words);
    }

    /** Where to stop and look before going on. */
    static Row stop(String words) {
        return barred(Type.STRONG, "Stop: " + words);
    }

    private static Row barred(Lettering letters, String words) {
        var canvas = new Canvas();
        double end = canvas.paragraph(letters, Point.of(6, Type.BODY.capitals() + PAD), Page.TEXT_WIDTH - 6, words);
        double height = end - Type.BODY.capitals() + 1;
        canvas.line(LineStyle.HEAVY, Point.of(1, 1), Point.of(1, height - 1.5));
        return row(canvas, height, words);
    }

    /** A picture in the middle, already of a size that fits. */
    static Row picture(Picture picture) {
        var canvas = new Canvas();
        canvas.place(picture, Point.of((Page.TEXT_WIDTH - picture.width()) / 2, 0));
        return row(canvas, picture.height() + 3, picture.title());
    }

    /** A hair line across. */
    static Row rule() {
        var canvas = new Canvas();
        canvas.line(LineStyle.NARROW, Point.of(0, 0.5), Point.of(Page.TEXT_WIDTH, 0.5));
        return row(canvas, 1, "rule");
    }

    /** Columns of words, the last ones right-aligned, under an optional hair line. */
    static Row columns(Lettering letters, List<String> words, List<Double> at) {
        var canvas = new Canvas();
        double lowest = 0;
        for (int i = 0; i < words.size(); i++) {
            double width = (i + 1 < at.size() ? at.get(i + 1) : Page.TEXT_WIDTH) - at.get(i) - 2;
            lowest = Math.max(
                    lowest,
                    canvas.paragraph(letters, Point.of(at.get(i), letters.capitals() + PAD), width, words.get(i)));
        }
        double height = lowest - letters.capitals() + 1;
        canvas.line(LineStyle.NARROW, Point.of(0, height), Point.of(Page.TEXT_WIDTH, height));
        return row(canvas, height + 0.5, words.getFirst());
    }

    static Row row(Canvas canvas, double height, String title) {
        return new Row(canvas.picture(Page.TEXT_WIDTH, Math.max(0.5, height), title.isBlank() ? "row" : title));
    }
}
