package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.List;
import java.util.stream.Stream;

/** What is drawn in one kind of line, as straight pieces, for tests that measure it. */
record Drawn(List<Segment> lines) {
    static Drawn of(List<Mark> marks, LineStyle style) {
        return new Drawn(marks.stream().flatMap(mark -> lines(mark, style)).toList());
    }

    private static Stream<Segment> lines(Mark mark, LineStyle style) {
        return switch (mark) {
            case Mark.Line line when line.style() == style -> Stream.of(new Segment(line.from(), line.to()));
            case Mark.Stroke stroke when stroke.style() == style -> along(stroke.path());
            case Mark.Circle circle
            when circle.style() == style -> {
                List<Point> round = Chords.circle(circle.centre(), circle.radius());
                yield Segment.along(Stream.concat(round.stream(), Stream.of(round.getFirst()))
                                .toList())
                        .stream();
            }
            case Mark.Line line -> Stream.empty();
            case Mark.Stroke stroke -> Stream.empty();
            case Mark.Circle circle -> Stream.empty();
            case Mark.Fill fill -> Stream.empty();
            case Mark.Disc disc -> Stream.empty();
            case Mark.Words words -> Stream.empty();
        };
    }

    private static Stream<Segment> along(Path path) {
        return Segment.along(Chords.of(path)).stream();
    }

    /** The heights above the axis (mm, up positive) at which these lines cross an upright line at x. */
    List<Double> heightsAt(double x) {
        return lines.stream()
                .filter(line -> line.from().x() < x != line.to().x() < x)
                .map(line -> -line.from()
                        .between(
                                line.to(),
                                (x - line.from().x())
                                        / (line.to().x() - line.from().x()))
                        .y())
                .sorted()
                .toList();
    }

    /** Whether a line passes within a distance of a point (mm). */
    boolean passes(Point point, double distance) {
        return lines.stream().anyMatch(line -> line.distance(point) <= distance);
    }
}
