package chargehand.drawing.dimension;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Arrow;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;

/** The marks that show where a section is taken: wide strokes above and below the view, arrows the way one looks, letters. */
final class CuttingPlane {
    private static final double CLEAR = 1.5;
    private static final double STROKE = 5;
    private static final double LETTER = 5;

    /** How much room the lower marks take below the outline (mm). */
    static final double ROOM = CLEAR + STROKE + 1;

    private CuttingPlane() {}

    /** The marks at x, the outline reaching so far from the axis there. */
    static Placing at(double x, double outline, String letter) {
        Placing.Pen pen = Placing.pen();
        Inscription inscription = new Inscription(Wording.of(letter), LETTER);
        for (int side : new int[] {-1, 1}) {
            Point near = new Point(x, side * (outline + CLEAR));
            Point far = near.moved(0, side * STROKE);
            pen.sign(new Mark.Line(LineStyle.WIDE, Ink.INK, near, far));
            Point elbow = far.moved(0, -side * 1.2);
            pen.line(Placing.Kind.LEADER, elbow.moved(-Arrow.LENGTH - 2, 0), elbow);
            pen.arrow(elbow, 0);
            double base = elbow.y() + inscription.ascent() / 2;
            pen.label(inscription, Local.at(new Point(x - Arrow.LENGTH - 3 - inscription.width(), base)));
        }
        return pen.at(0);
    }
}
