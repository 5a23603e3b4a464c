package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.KeySection;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.shape.Solid;
import java.util.List;

/** A section through a keyway with its width, and its depth measured from the far side of the shaft. */
public final class KeySizes {
    private static final double GAP = 1;
    private static final double OVERSHOOT = 2;
    private static final double TITLE = 5;

    private KeySizes() {}

    /** The section of a keyway under its letters, such as {@code A–A}. */
    public static Dimensioned of(Solid solid, SizeText text, double scale, Across.Keyway keyway, String letter) {
        View view = KeySection.of(solid, scale, keyway);
        Length radius = solid.outer().radiusBefore(KeySection.middle(keyway));
        double outer = scale * radius.mm();
        return new Dimensioned(
                view,
                List.of(width(text, scale, keyway, outer), depth(text, scale, keyway, radius), title(letter, outer)),
                List.of());
    }

    private static Placing width(SizeText text, double scale, Across.Keyway keyway, double outer) {
        double half = scale * keyway.width().length().mm() / 2;
        double corner = Math.sqrt(Math.max(0, outer * outer - half * half));
        double x = outer + LengthStack.FIRST;
        Placing.Pen pen = Placing.pen();
        for (double y : new double[] {-half, half}) {
            pen.line(Placing.Kind.EXTENSION, new Point(corner + GAP, y), new Point(x + OVERSHOOT, y));
        }
        Local frame = new Local(new Point(x, half), 90);
        new LinearDimension(frame, 2 * half, text.size(keyway.width())).draw(pen, true);
        return pen.at(0);
    }

    private static Placing depth(SizeText text, double scale, Across.Keyway keyway, Length radius) {
        double outer = scale * radius.mm();
        double floor = outer - scale * keyway.depth().length().mm();
        double half = scale * keyway.width().length().mm() / 2;
        double y = outer + LengthStack.FIRST;
        Placing.Pen pen = Placing.pen()
                .line(Placing.Kind.EXTENSION, new Point(-outer, GAP), new Point(-outer, y + OVERSHOOT))
                .line(Placing.Kind.EXTENSION, new Point(floor, half + GAP), new Point(floor, y + OVERSHOOT));
        Wording left = text.length(radius.times(2).minus(keyway.depth().length()));
        new LinearDimension(Local.at(new Point(-outer, y)), outer + floor, left).draw(pen, true);
        return pen.at(0);
    }

    private static Placing title(String letter, double outer) {
        Inscription title = new Inscription(Wording.of(letter + "–" + letter), TITLE);
        Local frame = Local.at(new Point(-title.width() / 2, -outer - 6));
        return Placing.pen().label(title, frame).at(0);
    }
}
