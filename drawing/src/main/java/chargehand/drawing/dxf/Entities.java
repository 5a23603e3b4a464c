package chargehand.drawing.dxf;

import chargehand.drawing.picture.Arc;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.List;

/** Writes what is drawn as the entities of release 12, at full size. */
final class Entities {
    private static final double ALL_ROUND = 2 * Math.PI - 1e-9;

    /** The value of group 72 for words between two points. */
    private static final int FIT = 5;

    private static final int HAS_VERTICES = 1;
    private static final int CLOSED = 1;

    private final Groups groups;
    private final FullSize size;

    Entities(Groups groups, FullSize size) {
        this.groups = groups;
        this.size = size;
    }

    void add(Drawn drawn) {
        switch (drawn) {
            case Drawn.Line line -> line(line);
            case Drawn.Filled(Layer layer, List<Point> corners) -> filled(layer, corners);
            case Drawn.Dot(Layer layer, Point centre, double radius) -> dot(layer, centre, radius);
            case Drawn.Words(Layer layer, Mark.Words words) -> words(layer, words);
        }
    }

    private void line(Drawn.Line line) {
        List<Trace> traces = line.chain().traces();
        if (traces.size() > 1) {
            polyline(line);
            return;
        }
        switch (traces.getFirst()) {
            case Trace.Straight(Point from, Point to) -> {
                begin("LINE", line);
                place(10, from).place(11, to);
            }
            case Trace.Round(Arc arc)
            when Math.abs(arc.sweep()) >= ALL_ROUND -> {
                begin("CIRCLE", line);
                place(10, arc.centre()).groups.number(40, size.size(arc.radius()));
            }
            case Trace.Round(Arc arc) -> {
                begin("ARC", line);
                place(10, arc.centre()).groups.number(40, size.size(arc.radius()));
                double first = arc.start() + Math.max(0, arc.sweep());
                double last = arc.start() + Math.min(0, arc.sweep());
                groups.number(50, degrees(first)).number(51, degrees(last));
            }
        }
    }

    /** An angle that grew clockwise on paper, as one from 0 to 360 that grows anticlockwise. */
    private static double degrees(double clockwise) {
        double degrees = -Math.toDegrees(clockwise);
        return degrees - 360 * Math.floor(degrees / 360);
    }

    private void polyline(Drawn.Line line) {
        begin("POLYLINE", line);
        groups.whole(66, HAS_VERTICES).place(10, 0, 0).number(30, 0);
        if (line.chain().closed()) {
            groups.whole(70, CLOSED);
        }
        List<Trace> traces = line.chain().traces();
        for (Trace trace : traces) {
            vertex(line.layer(), trace.at(0), bulge(trace));
        }
        if (!line.chain().closed()) {
            vertex(line.layer(), traces.getLast().at(1), 0);
        }
        begin("SEQEND", line.layer());
    }

    private void vertex(Layer layer, Point at, double bulge) {
        begin("VERTEX", layer);
        place(10, at);
        if (bulge != 0) {
            groups.number(42, bulge);
        }
    }

    /** The tangent of a quarter of the arc's angle, positive anticlockwise. */
    private static double bulge(Trace trace) {
        return switch (trace) {
            case Trace.Straight straight -> 0;
            case Trace.Round(Arc arc) -> Math.tan(-arc.sweep() / 4);
        };
    }

    /** A solid's corners go across it: first, second, fourth, third. Of three the last one counts twice. */
    private void filled(Layer layer, List<Point> corners) {
        begin("SOLID", layer);
        place(10, corners.get(0)).place(11, corners.get(1));
        place(12, corners.getLast()).place(13, corners.get(2));
    }

    /** A circle filled by a line half as far out and as wide as the radius. */
    private void dot(Layer layer, Point centre, double radius) {
        begin("POLYLINE", layer);
        double width = size.size(radius);
        groups.whole(66, HAS_VERTICES).place(10, 0, 0).number(30, 0).whole(70, CLOSED);
        groups.number(40, width).number(41, width);
        vertex(layer, centre.moved(-radius / 2, 0), 1);
        vertex(layer, centre.moved(radius / 2, 0), 1);
        begin("SEQEND", layer);
    }

    /** Words fit between two points, so that they take the room they were measured for in whatever letters they are shown. */
    private void words(Layer layer, Mark.Words words) {
        double width = words.lettering().width(words.text());
        double back = switch (words.align()) {
            case LEFT -> 0;
            case MIDDLE -> width / 2;
            case RIGHT -> width;
        };
        Point start = words.at().towards(words.turned(), -back);
        begin("TEXT", layer);
        place(10, start).groups.number(40, size.size(words.lettering().capitals()));
        groups.words(1, PlainText.of(words.text())).number(50, words.turned()).words(7, Tables.STYLE);
        groups.whole(72, FIT);
        place(11, start.towards(words.turned(), width));
    }

    private void begin(String entity, Layer layer) {
        groups.words(0, entity).words(8, layer.name());
    }

    /** Begins a line; its kind is written where it is not that of its layer. */
    private void begin(String entity, Drawn.Line line) {
        begin(entity, line.layer());
        if (line.type() != line.layer().line()) {
            groups.words(6, line.type().toString());
        }
    }

    private Entities place(int code, Point point) {
        groups.place(code, size.x(point), size.y(point));
        return this;
    }
}
