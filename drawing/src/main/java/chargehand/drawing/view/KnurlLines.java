package chargehand.drawing.view;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Knurl;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;

/** The pattern of knurls, on a part of them only (ISO 128-3 and DIN 82, from memory): narrow lines. */
record KnurlLines(Look look) {
    /** How much of a knurl's length carries the pattern. */
    private static final double SHARE = 0.4;

    /** The pattern goes no further than this along the axis (mm). */
    private static final double MOST = 14;

    /** The least room between lines (mm): finer ones run together in print. */
    private static final double LEAST = 1.5;

    /** Angle of the ridges of a diamond knurl to the axis (degrees). */
    private static final double SLANT = 30;

    void draw(Pencil pencil) {
        look.body().ifPresent(body -> draw(body, pencil));
    }

    private void draw(Body.Turned body, Pencil pencil) {
        for (int i = 0; i < body.outside().size(); i++) {
            if (body.outside().get(i) instanceof Section.Knurled knurled) {
                for (Side side : Side.values()) {
                    if (!side.isCut(look.cut())) {
                        pencil.putAll(patch(knurled, body.start(i), side));
                    }
                }
            }
        }
    }

    /** The pattern beside the end nearer B, broken off aslant. */
    private List<Mark> patch(Section.Knurled knurled, Length start, Side side) {
        AxialScale scale = look.scale();
        Length end = start.plus(knurled.length());
        double right = scale.x(end);
        double wide = Math.min(MOST, SHARE * (right - scale.x(start)));
        double high = scale.size(knurled.diameter().length().half());
        List<Point> area = new ArrayList<>();
        area.add(new Point(right - wide, 0));
        Length begin = scale.at(right - wide * 0.6).orElse(end);
        for (Point point : Contour.above(look.solid().outer().cut(begin, end), scale)) {
            area.add(new Point(point.x(), side.outward() * -point.y()));
        }
        area.add(new Point(right, 0));
        double pitch = Math.max(LEAST, scale.size(knurled.pitch().length()));
        return Clip.along(area).within(lines(knurled.pattern(), Box.around(area), new Ridges(pitch, high, side)));
    }

    /**
     * Where ridges lie.
     *
     * @param pitch from one to the next on paper (mm)
     * @param high the radius of the knurl on paper (mm)
     */
    private record Ridges(double pitch, double high, Side side) {}

    private static List<Mark> lines(Knurl pattern, Box area, Ridges ridges) {
        return switch (pattern) {
            case STRAIGHT -> straight(area, ridges);
            case DIAMOND -> {
                List<Mark> lines = new ArrayList<>(slanted(area, ridges, SLANT));
                lines.addAll(slanted(area, ridges, -SLANT));
                yield lines;
            }
        };
    }

    /** Ridges along the axis, ever closer towards the outline as one sees them. */
    private static List<Mark> straight(Box area, Ridges ridges) {
        List<Mark> lines = new ArrayList<>();
        double step = ridges.pitch / ridges.high;
        for (double turn = step / 2; turn < Math.PI / 2; turn += step) {
            double y = ridges.side.outward() * ridges.high * Math.sin(turn);
            lines.add(line(new Point(area.left(), y), new Point(area.right(), y)));
        }
        return lines;
    }

    private static List<Mark> slanted(Box area, Ridges ridges, double slant) {
        List<Mark> lines = new ArrayList<>();
        double rise = Math.tan(Math.toRadians(slant)) * area.width();
        double step = ridges.pitch / Math.cos(Math.toRadians(slant));
        double far = Math.ceil((area.height() + Math.abs(rise)) / step) * step;
        for (double y = -far; y <= far; y += step) {
            lines.add(line(new Point(area.left(), y), new Point(area.right(), y + rise)));
        }
        return lines;
    }

    private static Mark line(Point from, Point to) {
        return new Mark.Line(LineStyle.NARROW, Ink.INK, from, to);
    }
}
