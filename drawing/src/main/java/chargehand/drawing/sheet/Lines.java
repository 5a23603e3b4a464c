package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.lettering.Weight;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;

/** Lines of words on the sheet, their diameter and square signs drawn as everywhere on it. */
final class Lines {
    private Lines() {}

    /** One line from a point on its base line to the right. */
    static void words(Canvas canvas, Lettering lettering, Point at, String text) {
        boolean signs = text.contains(Wording.DIAMETER) || text.contains(Wording.SQUARE);
        if (signs) {
            canvas.putAll(Wording.of(text).marks(Local.at(at), lettering.capitals(), Ink.INK));
        } else {
            canvas.words(lettering, at, Mark.Align.LEFT, text);
        }
    }

    /** A line that is no wider than a width (mm), its letters smaller where they have to be. */
    static void fitted(Canvas canvas, Lettering lettering, Point at, double width, String text) {
        double wanted = width(lettering, text);
        double size = wanted <= width ? lettering.size() : lettering.size() * width / wanted;
        words(canvas, new Lettering(lettering.weight(), size), at, text);
    }

    /** The wider of the two ways a line may be set. */
    private static double width(Lettering lettering, String text) {
        double asWords = lettering.width(text);
        return text.isBlank() || lettering.weight() != Weight.REGULAR
                ? asWords
                : Math.max(asWords, Wording.of(text).width(lettering.capitals()));
    }
}
