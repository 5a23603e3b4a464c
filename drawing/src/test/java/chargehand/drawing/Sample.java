package chargehand.drawing;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import java.util.List;

/** A small picture with every kind of mark in it. */
public final class Sample {
    private Sample() {}

    public static Picture picture() {
        Path arch = new Path(
                Point.of(10, 30),
                List.of(new Path.Bend(Point.of(30, 30), 10, true), new Path.Straight(Point.of(30, 40))),
                false);
        return new Canvas()
                .fill(Ink.QUIET, Path.box(Point.of(5, 5), 50, 40))
                .box(LineStyle.WIDE, Point.of(5, 5), 50, 40)
                .line(LineStyle.CHAIN, Point.of(2, 25), Point.of(58, 25))
                .stroke(LineStyle.HEAVY, arch)
                .circle(LineStyle.HIDDEN, Point.of(44, 18), 8)
                .put(new Mark.Disc(Ink.MARKING, Point.of(44, 18), 1))
                .words(Lettering.height(3.5), Point.of(8, 12), "Ram & gland < 1/2")
                .put(new Mark.Words(
                        Ink.MARKING, Lettering.height(2.5).bold(), Point.of(54, 40), Mark.Align.MIDDLE, 90, "1.250"))
                .picture(60, 50, "Every kind of mark");
    }
}
