package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import java.util.List;

/** The sign of surface texture with a bar, material to be removed (ISO 21920-1; proportions from memory). */
public final class TextureSign {
    private TextureSign() {}

    /**
     * Its marks, standing on the frame's origin.
     *
     * @param value what stands under the shelf, such as {@code Ra 3.2}
     * @param h lettering height (mm)
     */
    public static List<Mark> marks(Local frame, String value, double h) {
        Lettering lettering = Lettering.height(h);
        double right = 1.73 * h + lettering.width(value) + 0.5 * h;
        return List.of(
                new Mark.Stroke(
                        LineStyle.SYMBOL,
                        Ink.INK,
                        frame.through(-0.81 * h, 1.4 * h, 0, 0, 1.73 * h, 3 * h, right, 3 * h)),
                new Mark.Line(LineStyle.SYMBOL, Ink.INK, frame.at(-0.81 * h, 1.4 * h), frame.at(0.81 * h, 1.4 * h)),
                Wording.words(frame, 1.9 * h, 1.6 * h, lettering, value, Ink.INK));
    }
}
