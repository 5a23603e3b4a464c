package chargehand.drawing.view;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * What a view shows and what words must keep clear of.
 *
 * @param marks what is drawn
 * @param outlines the straight pieces of its lines, axes left out
 * @param axes its axes and centre lines, which words may interrupt if they must
 * @param hatched the boxes that hold hatching, each no larger than the stretch it lies in
 */
public record View(List<Mark> marks, List<Segment> outlines, List<Segment> axes, List<Box> hatched) {
    public View {
        marks = List.copyOf(marks);
        outlines = List.copyOf(outlines);
        axes = List.copyOf(axes);
        hatched = List.copyOf(hatched);
    }

    /** A view of these marks with no hatching; every line in it but axes counts as outline. */
    public static View of(List<Mark> marks) {
        return of(marks, List.of());
    }

    public static View of(List<Mark> marks, List<Box> hatched) {
        List<Segment> outlines =
                marks.stream().flatMap(mark -> outlines(mark).stream()).toList();
        List<Segment> axes = marks.stream().flatMap(mark -> axes(mark).stream()).toList();
        return new View(marks, outlines, axes, hatched);
    }

    private static List<Segment> axes(Mark mark) {
        return mark instanceof Mark.Line line && line.style() == LineStyle.CHAIN
                ? List.of(new Segment(line.from(), line.to()))
                : List.of();
    }

    private static List<Segment> outlines(Mark mark) {
        return switch (mark) {
            case Mark.Line(var style, var ink, Point from, Point to) ->
                switch (style) {
                    case CHAIN, DOUBLE_CHAIN, HATCH -> List.of();
                    case FRAME, HEAVY, WIDE, SYMBOL, NARROW, HIDDEN -> List.of(new Segment(from, to));
                };
            case Mark.Stroke(var style, var ink, Path path) -> along(path);
            case Mark.Circle(var style, var ink, Point centre, double radius) -> Segment.along(round(centre, radius));
            case Mark.Fill fill -> List.of();
            case Mark.Disc disc -> List.of();
            case Mark.Words words -> List.of();
        };
    }

    private static List<Segment> along(Path path) {
        List<Point> points = new ArrayList<>();
        points.add(path.start());
        path.runs().forEach(run -> points.add(run.to()));
        if (path.closed()) {
            points.add(path.start());
        }
        return Segment.along(points);
    }

    /** A circle as the chords of a 24-sided figure. */
    private static List<Point> round(Point centre, double radius) {
        List<Point> points = new ArrayList<>();
        for (int degrees = 0; degrees <= 360; degrees += 15) {
            points.add(centre.towards(degrees, radius));
        }
        return points;
    }

    /** What the whole view covers. */
    public Box bounds() {
        return Box.of(marks);
    }

    public View moved(double right, double down) {
        return new View(
                marks.stream().map(mark -> mark.moved(right, down)).toList(),
                outlines.stream().map(segment -> segment.moved(right, down)).toList(),
                axes.stream().map(segment -> segment.moved(right, down)).toList(),
                hatched.stream().map(box -> box.moved(right, down)).toList());
    }

    /** This view and another one in the same frame. */
    public View with(View other) {
        return new View(
                joined(marks, other.marks),
                joined(outlines, other.outlines),
                joined(axes, other.axes),
                joined(hatched, other.hatched));
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }
}
