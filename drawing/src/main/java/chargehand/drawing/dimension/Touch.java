package chargehand.drawing.dimension;

import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Brings the tips of leaders onto the lines as they are drawn: a curve is drawn by its chords, which lie a little within it, and
 * an arrow should touch what the eye sees.
 */
final class Touch {
    /** Nearer than this a tip is on its line (mm). */
    private static final double ON = 0.004;

    /** Further than this a tip is not moved (mm). */
    private static final double FURTHEST = 0.3;

    private final List<Segment> straight = new ArrayList<>();
    private final List<Mark.Circle> circles = new ArrayList<>();

    Touch(List<Mark> marks) {
        for (Mark mark : marks) {
            switch (mark) {
                case Mark.Line line -> straight.add(new Segment(line.from(), line.to()));
                case Mark.Stroke stroke -> straight.addAll(along(stroke.path()));
                case Mark.Circle circle -> circles.add(circle);
                case Mark.Fill fill -> {}
                case Mark.Disc disc -> {}
                case Mark.Words words -> {}
            }
        }
    }

    private static List<Segment> along(Path path) {
        List<Point> points = new ArrayList<>(List.of(path.start()));
        path.runs().forEach(run -> points.add(run.to()));
        if (path.closed()) {
            points.add(path.start());
        }
        return Segment.along(points);
    }

    /** A size with its leader's tip on the nearest line along the leader. */
    Placing brought(Placing placing) {
        boolean leader =
                placing.arrows().size() == 1 && placing.lines().getFirst().kind() == Placing.Kind.LEADER;
        if (!leader) {
            return placing;
        }
        Point tip = placing.tips().getFirst();
        return isOn(tip) ? placing : reach(placing, tip).map(placing::tipAt).orElse(placing);
    }

    private boolean isOn(Point tip) {
        return circles.stream().anyMatch(circle -> Math.abs(circle.centre().distance(tip) - circle.radius()) < ON)
                || straight.stream().anyMatch(line -> line.distance(tip) < ON);
    }

    /** Where the leader, drawn a little further or less far, meets a line. */
    private Optional<Point> reach(Placing placing, Point tip) {
        double direction = placing.arrows().getFirst().direction();
        Point near = tip.towards(direction, -FURTHEST);
        Point far = tip.towards(direction, FURTHEST);
        Segment way = new Segment(near, far);
        return straight.stream().flatMap(line -> crossing(way, line)).min(Comparator.comparingDouble(tip::distance));
    }

    private static Stream<Point> crossing(Segment way, Segment line) {
        if (!way.crosses(line)) {
            return Stream.empty();
        }
        double ax = way.to().x() - way.from().x();
        double ay = way.to().y() - way.from().y();
        double bx = line.to().x() - line.from().x();
        double by = line.to().y() - line.from().y();
        double part = ((line.from().x() - way.from().x()) * by
                        - (line.from().y() - way.from().y()) * bx)
                / (ax * by - ay * bx);
        return Stream.of(way.from().between(way.to(), part));
    }
}
