package chargehand.drawing.dxf;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An area within straight sides; a path's arcs are taken as short chords.
 *
 * @param corners in order round it
 */
record Area(List<Point> corners) {
    /** An arc becomes so many chords. */
    private static final int CHORDS = 16;

    Area {
        corners = List.copyOf(corners);
    }

    static Area of(Path path) {
        List<Point> corners = new ArrayList<>(List.of(path.start()));
        for (Trace trace : Trace.along(path)) {
            switch (trace) {
                case Trace.Straight straight -> corners.add(straight.to());
                case Trace.Round round -> {
                    for (int chord = 1; chord <= CHORDS; chord++) {
                        corners.add(round.at((double) chord / CHORDS));
                    }
                }
            }
        }
        if (corners.size() > 1 && corners.getLast().distance(corners.getFirst()) == 0) {
            corners.removeLast();
        }
        return new Area(corners);
    }

    Box box() {
        return Box.around(corners);
    }

    List<Segment> sides() {
        List<Point> round = new ArrayList<>(corners);
        round.add(corners.getFirst());
        return Segment.along(round);
    }

    /** Whether a point lies within it: a line from there to the right crosses an odd number of sides. */
    boolean holds(Point point) {
        boolean within = false;
        for (Segment side : sides()) {
            boolean passes = side.from().y() > point.y() != side.to().y() > point.y();
            if (passes && point.x() < crossing(side, point.y())) {
                within = !within;
            }
        }
        return within;
    }

    private static double crossing(Segment side, double y) {
        double part = (y - side.from().y()) / (side.to().y() - side.from().y());
        return side.from().x() + part * (side.to().x() - side.from().x());
    }

    /** Whether it has four corners and bulges at each of them. */
    boolean isQuadrilateral() {
        double turn = Math.signum(doubleArea(corners));
        return corners.size() == 4 && IntStream.range(0, 4).allMatch(at -> doubleArea(around(corners, at)) * turn > 0);
    }

    /** The area as triangles that do not overlap, by cutting off one corner after another. */
    List<List<Point>> triangles() {
        List<Point> left = new ArrayList<>(corners);
        List<List<Point>> triangles = new ArrayList<>();
        while (left.size() > 3) {
            int ear = ear(left);
            triangles.add(around(left, ear));
            left.remove(ear);
        }
        triangles.add(left);
        return triangles;
    }

    /** A corner that can be cut off; the first where none can, as of an area without any width. */
    private static int ear(List<Point> left) {
        double turn = Math.signum(doubleArea(left));
        for (int i = 0; i < left.size(); i++) {
            List<Point> triangle = around(left, i);
            boolean bulges = doubleArea(triangle) * turn > 0;
            if (bulges
                    && left.stream().filter(point -> !triangle.contains(point)).noneMatch(p -> covers(triangle, p))) {
                return i;
            }
        }
        return 0;
    }

    /** Whether a point lies within a triangle or on its border. */
    private static boolean covers(List<Point> triangle, Point point) {
        double turn = Math.signum(doubleArea(triangle));
        return IntStream.range(0, 3)
                .allMatch(at -> doubleArea(List.of(triangle.get(at), triangle.get((at + 1) % 3), point)) * turn >= 0);
    }

    private static List<Point> around(List<Point> corners, int at) {
        int size = corners.size();
        return List.of(corners.get((at + size - 1) % size), corners.get(at), corners.get((at + 1) % size));
    }

    private static double doubleArea(List<Point> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point one = corners.get(i);
            Point next = corners.get((i + 1) % corners.size());
            sum += one.x() * next.y() - next.x() * one.y();
        }
        return sum;
    }
}
