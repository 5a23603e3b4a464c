package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;

/** A bar of 50 mm to lay a rule on: it tells whether a print is as large as it should be. */
final class CheckBar {
    /** How long it is (mm). */
    static final double LENGTH = 50;

    private static final double DIVISION = 10;
    private static final double TICK = 0.8;
    private static final double END_TICK = 1.4;

    private CheckBar() {}

    /** Draws it from its left end, its divisions up from it, the words above. */
    static void draw(Canvas canvas, Point left) {
        Lettering caption = Lettering.height(1.8);
        canvas.line(LineStyle.SYMBOL, left, left.moved(LENGTH, 0));
        for (double at = 0; at <= LENGTH; at += DIVISION) {
            boolean end = at == 0 || at == LENGTH;
            canvas.line(LineStyle.SYMBOL, left.moved(at, 0), left.moved(at, end ? -END_TICK : -TICK));
        }
        canvas.words(caption, left.moved(0, -1.8), "Print at 100 %: this bar is 50 mm");
    }
}
