package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import java.util.List;

/**
 * Holes on a circle in the side view, one of them turned into the plane of the section (ISO 128-3, from memory), or hidden
 * where the part is not cut. Lengths are on paper (mm), heights from the axis.
 */
final class FaceHoleLines {
    private static final double OVERRUN = 2;

    private final AcrossLines lines;
    private final FaceHole hole;
    private final double start;
    private final double floor;
    private final double threadEnd;
    private final double tip;
    private final double half;
    private final double root;
    private final double circle;

    private FaceHoleLines(Look look, FaceHole hole, AcrossLines lines) {
        this.lines = lines;
        this.hole = hole;
        AxialScale scale = look.scale();
        start = scale.x(hole.start());
        floor = scale.x(hole.floor());
        threadEnd = scale.x(hole.threadEnd());
        tip = floor + hole.inward() * scale.size(hole.tip());
        half = scale.size(hole.diameter()) / 2;
        root = hole.thread()
                .map(thread -> half + Math.max(ThreadLines.LEAST, scale.size(thread.depth())))
                .orElse(half);
        circle = scale.size(hole.circle().diameter().length()) / 2;
    }

    static void draw(Look look, AcrossLines lines) {
        look.body()
                .ifPresent(body -> FaceHole.of(body, look.solid()).forEach(hole -> {
                    int before = lines.pencil.marks().size();
                    new FaceHoleLines(look, hole, lines).draw(look.cut());
                    lines.quieten(hole.feature(), before);
                }));
    }

    private void draw(Cut cut) {
        boolean both = hole.circle().count() > 1;
        for (Side side : Side.values()) {
            boolean shown = side.isCut(cut) ? both || side == Side.BELOW : cut == Cut.NONE && side == Side.BELOW;
            if (shown) {
                hole(side, side.isCut(cut) ? LineStyle.WIDE : LineStyle.HIDDEN);
            }
            if (shown || both) {
                double out = -hole.inward() * OVERRUN;
                lines.pencil.line(LineStyle.CHAIN, at(side, start + out, 0), at(side, tip - out, 0));
            }
        }
    }

    private void hole(Side side, LineStyle style) {
        for (int out : new int[] {-1, 1}) {
            lines.pencil.line(style, at(side, start, out * half), at(side, floor, out * half));
            if (root > half) {
                LineStyle narrow = style == LineStyle.WIDE ? LineStyle.NARROW : style;
                lines.pencil.line(narrow, at(side, start, out * root), at(side, threadEnd, out * root));
            }
        }
        if (!hole.through()) {
            lines.pencil.line(style, at(side, floor, -half), at(side, floor, half));
            lines.pencil.line(style, List.of(at(side, floor, -half), at(side, tip, 0), at(side, floor, half)));
            if (root > half) {
                lines.pencil.line(style, at(side, threadEnd, -root), at(side, threadEnd, root));
            }
        }
        if (style == LineStyle.WIDE) {
            lines.cutOuts.add(List.of(
                    at(side, start, -half),
                    at(side, floor, -half),
                    at(side, tip, 0),
                    at(side, floor, half),
                    at(side, start, half)));
        }
    }

    private Point at(Side side, double x, double off) {
        return new Point(x, side.outward() * (circle + off));
    }
}
