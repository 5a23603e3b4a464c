package chargehand.drawing.checking;

import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.List;

/** Where one line runs. */
sealed interface Trace {
    /** How far a point lies from it (mm). */
    double distance(Point point);

    /** It as straight pieces, near enough for telling what lies on it. */
    List<Segment> pieces();

    /** A straight line. */
    record Straight(Segment segment) implements Trace {
        @Override
        public double distance(Point point) {
            return segment.distance(point);
        }

        @Override
        public List<Segment> pieces() {
            return List.of(segment);
        }
    }

    /**
     * A piece of a circle.
     *
     * @param from where it begins (degrees, 0 to the right, anticlockwise as seen)
     * @param sweep how far it goes anticlockwise (degrees), 360 all round
     */
    record Round(Point centre, double radius, double from, double sweep) implements Trace {
        private static final double STEP = 6;

        @Override
        public double distance(Point point) {
            double around = degrees(centre, point);
            double past = ((around - from) % 360 + 360) % 360;
            return past <= sweep
                    ? Math.abs(centre.distance(point) - radius)
                    : Math.min(at(from).distance(point), at(from + sweep).distance(point));
        }

        private Point at(double degrees) {
            return centre.towards(degrees, radius);
        }

        @Override
        public List<Segment> pieces() {
            int steps = Math.max(1, (int) Math.ceil(sweep / STEP));
            List<Point> points = new ArrayList<>();
            for (int i = 0; i <= steps; i++) {
                points.add(at(from + sweep * i / steps));
            }
            return Segment.along(points);
        }
    }

    static Trace circle(Point centre, double radius) {
        return new Round(centre, radius, 0, 360);
    }

    /** The pieces of a path, one for each run. */
    static List<Trace> of(Path path) {
        List<Trace> traces = new ArrayList<>();
        Point at = path.start();
        for (Path.Run run : path.runs()) {
            traces.add(of(at, run));
            at = run.to();
        }
        if (path.closed()) {
            traces.add(new Straight(new Segment(at, path.start())));
        }
        return traces;
    }

    private static Trace of(Point from, Path.Run run) {
        return switch (run) {
            case Path.Straight(Point to) -> new Straight(new Segment(from, to));
            case Path.Bend(Point to, double radius, boolean clockwise) -> bend(from, to, radius, clockwise);
        };
    }

    private static Trace bend(Point from, Point to, double radius, boolean clockwise) {
        double chord = from.distance(to);
        double off = Math.sqrt(Math.max(0, radius * radius - chord * chord / 4)) / chord * (clockwise ? 1 : -1);
        Point middle = from.between(to, 0.5);
        Point centre = middle.moved(-off * (to.y() - from.y()), off * (to.x() - from.x()));
        double start = degrees(centre, clockwise ? to : from);
        double end = degrees(centre, clockwise ? from : to);
        return new Round(centre, radius, start, ((end - start) % 360 + 360) % 360);
    }

    private static double degrees(Point from, Point to) {
        return Math.toDegrees(Math.atan2(from.y() - to.y(), to.x() - from.x()));
    }
}
