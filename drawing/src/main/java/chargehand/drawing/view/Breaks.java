package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** Shows where a long part is broken: two narrow lines, zigzag or freehand, the paper showing between them. */
final class Breaks {
    private static final double OVERRUN = 2;
    private static final double ZIG = 1.6;

    private Breaks() {}

    static void draw(Look look, Pencil pencil) {
        for (AxialScale.Gap gap : look.scale().gaps()) {
            double from = look.scale().x(gap.from());
            Length outer = look.solid().outer().most(gap.from(), gap.to());
            double reach = look.scale().size(outer) + OVERRUN;
            List<Point> left = line(look, from, reach);
            List<Point> right = line(look, from + AxialScale.BREAK, reach);
            List<Point> between = new ArrayList<>(left);
            between.addAll(right.reversed());
            pencil.put(new Mark.Fill(Ink.PAPER, Path.round(between)));
            pencil.line(LineStyle.NARROW, left);
            pencil.line(LineStyle.NARROW, right);
        }
    }

    /** One kind on a drawing (ISO 128-2): by hand where a break-out is, since that can be nothing else. */
    private static List<Point> line(Look look, double x, double reach) {
        return look.cut() == Cut.LOCAL
                ? Freehand.straight(new Point(x, -reach), new Point(x, reach))
                : zigzag(x, reach);
    }

    /** A line across with one zigzag at the axis. */
    private static List<Point> zigzag(double x, double reach) {
        return List.of(
                new Point(x, -reach),
                new Point(x, -1.5 * ZIG),
                new Point(x - ZIG, -0.5 * ZIG),
                new Point(x + ZIG, 0.5 * ZIG),
                new Point(x, 1.5 * ZIG),
                new Point(x, reach));
    }
}
