package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/** A section square to the axis through the middle of a keyway, seen from end A, the keyway to the right, the axis at 0. */
public final class KeySection {
    private static final int CHORDS = 72;
    private static final double OVERRUN = 3;

    private final double outer;
    private final double inner;
    private final double half;
    private final double floor;

    private KeySection(Solid solid, double scale, Across.Keyway keyway) {
        Length middle = middle(keyway);
        outer = scale * solid.outer().radiusBefore(middle).mm();
        inner = scale * solid.innerAtMost().radiusBefore(middle).mm();
        half = scale * keyway.width().length().mm() / 2;
        floor = outer - scale * keyway.depth().length().mm();
    }

    /** Where along the axis the section is taken. */
    public static Length middle(Across.Keyway keyway) {
        return keyway.from().length().plus(keyway.length().length().half());
    }

    public static View of(Solid solid, double scale, Across.Keyway keyway) {
        KeySection section = new KeySection(solid, scale, keyway);
        Pencil pencil = new Pencil();
        List<Point> outline = section.outline();
        List<List<Point>> cut = new ArrayList<>();
        cut.add(outline);
        if (section.inner > 0) {
            cut.add(circle(section.inner));
            pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, new Point(0, 0), section.inner));
        }
        pencil.putAll(Hatching.of(solid).within(cut));
        pencil.closed(keyway.isThere() ? LineStyle.DOUBLE_CHAIN : LineStyle.WIDE, outline);
        double reach = section.outer + OVERRUN;
        pencil.line(LineStyle.CHAIN, new Point(-reach, 0), new Point(reach, 0));
        pencil.line(LineStyle.CHAIN, new Point(0, -reach), new Point(0, reach));
        return View.of(pencil.marks());
    }

    /** The shaft's circle with the keyway cut out of it. */
    private List<Point> outline() {
        double edge = Math.toDegrees(Math.asin(Math.min(1, half / outer)));
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i <= CHORDS; i++) {
            outline.add(new Point(0, 0).towards(edge + (360 - 2 * edge) * i / CHORDS, outer));
        }
        outline.add(new Point(floor, half));
        outline.add(new Point(floor, -half));
        return outline;
    }

    private static List<Point> circle(double radius) {
        List<Point> circle = new ArrayList<>();
        for (int i = 0; i < CHORDS; i++) {
            circle.add(new Point(0, 0).towards(360.0 * i / CHORDS, radius));
        }
        return circle;
    }
}
