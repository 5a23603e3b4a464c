package chargehand.drawing.dxf;

import chargehand.drawing.picture.Arc;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.List;

/** One straight or round piece of a line; places on it are parts of its way, 0 its begin, 1 its end. */
sealed interface Trace {
    Point at(double part);

    Trace piece(double from, double to);

    /** Where on its way it meets a straight line. */
    List<Double> meets(Segment line);

    /** A straight piece. */
    record Straight(Point from, Point to) implements Trace {
        @Override
        public Point at(double part) {
            return from.between(to, part);
        }

        @Override
        public Trace piece(double begin, double end) {
            return new Straight(at(begin), at(end));
        }

        @Override
        public List<Double> meets(Segment line) {
            double dx = to.x() - from.x();
            double dy = to.y() - from.y();
            double across = dx * (line.to().y() - line.from().y())
                    - dy * (line.to().x() - line.from().x());
            if (across == 0) {
                return List.of();
            }
            double x = line.from().x() - from.x();
            double y = line.from().y() - from.y();
            double here = (x * (line.to().y() - line.from().y())
                            - y * (line.to().x() - line.from().x()))
                    / across;
            double there = (x * dy - y * dx) / across;
            return here > 0 && here < 1 && there >= 0 && there <= 1 ? List.of(here) : List.of();
        }
    }

    /** A round piece. */
    record Round(Arc arc) implements Trace {
        @Override
        public Point at(double part) {
            return arc.at(part);
        }

        @Override
        public Trace piece(double begin, double end) {
            return new Round(arc.piece(begin, end));
        }

        @Override
        public List<Double> meets(Segment line) {
            double dx = line.to().x() - line.from().x();
            double dy = line.to().y() - line.from().y();
            double x = line.from().x() - arc.centre().x();
            double y = line.from().y() - arc.centre().y();
            double square = dx * dx + dy * dy;
            double half = x * dx + y * dy;
            double under = half * half - square * (x * x + y * y - arc.radius() * arc.radius());
            List<Double> met = new ArrayList<>();
            if (square > 0 && under > 0) {
                for (double root : new double[] {-Math.sqrt(under), Math.sqrt(under)}) {
                    double along = (root - half) / square;
                    double part = part(line.from().between(line.to(), along));
                    if (along >= 0 && along <= 1 && part > 0 && part < 1) {
                        met.add(part);
                    }
                }
            }
            return met;
        }

        /** Where on its way, or past its end, a point of the circle lies. */
        private double part(Point point) {
            double angle = Math.atan2(
                    point.y() - arc.centre().y(), point.x() - arc.centre().x());
            double turned = (angle - arc.start()) * Math.signum(arc.sweep());
            double round = 2 * Math.PI;
            return (turned - round * Math.floor(turned / round)) / Math.abs(arc.sweep());
        }
    }

    /** The pieces of a path in order; a closed one ends where it began. */
    static List<Trace> along(Path path) {
        List<Trace> traces = new ArrayList<>();
        Point from = path.start();
        for (Path.Run run : path.runs()) {
            traces.add(
                    switch (run) {
                        case Path.Straight(Point to) -> new Straight(from, to);
                        case Path.Bend bend -> new Round(Arc.of(from, bend));
                    });
            from = run.to();
        }
        if (path.closed() && from.distance(path.start()) > 0) {
            traces.add(new Straight(from, path.start()));
        }
        return traces;
    }
}
