package chargehand.drawing.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A line on paper made of straight runs and arcs.
 *
 * @param start where it begins
 * @param runs how it goes on, at least one
 * @param closed whether it goes back to its start in a straight run
 */
public record Path(Point start, List<Run> runs, boolean closed) {
    public Path {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("a path goes somewhere");
        }
    }

    /** One piece of a path, from where the last one ended. */
    public sealed interface Run {
        Point to();

        Run moved(double right, double down);
    }

    /** Straight on. */
    public record Straight(Point to) implements Run {
        @Override
        public Run moved(double right, double down) {
            return new Straight(to.moved(right, down));
        }
    }

    /**
     * An arc of not more than half a circle.
     *
     * @param radius of the arc (mm), at least half the distance it spans
     * @param clockwise as seen on paper
     */
    public record Bend(Point to, double radius, boolean clockwise) implements Run {
        @Override
        public Run moved(double right, double down) {
            return new Bend(to.moved(right, down), radius, clockwise);
        }
    }

    /** An open path straight from point to point. */
    public static Path through(List<Point> points) {
        return of(points, false);
    }

    /** A closed path straight from point to point. */
    public static Path round(List<Point> points) {
        return of(points, true);
    }

    /** An upright rectangle. */
    public static Path box(Point corner, double width, double height) {
        return round(List.of(corner, corner.moved(width, 0), corner.moved(width, height), corner.moved(0, height)));
    }

    private static Path of(List<Point> points, boolean closed) {
        List<Run> runs = new ArrayList<>();
        points.stream().skip(1).forEach(point -> runs.add(new Straight(point)));
        return new Path(points.getFirst(), runs, closed);
    }

    public Path moved(double right, double down) {
        return new Path(
                start.moved(right, down),
                runs.stream().map(run -> run.moved(right, down)).toList(),
                closed);
    }

    /** Its length along the line (mm). */
    public double length() {
        double length = 0;
        Point at = start;
        for (Run run : runs) {
            length += length(at, run);
            at = run.to();
        }
        return closed ? length + at.distance(start) : length;
    }

    private static double length(Point from, Run run) {
        return switch (run) {
            case Straight(Point to) -> from.distance(to);
            case Bend(Point to, double radius, boolean clockwise) ->
                2 * radius * Math.asin(Math.min(1, from.distance(to) / (2 * radius)));
        };
    }
}
