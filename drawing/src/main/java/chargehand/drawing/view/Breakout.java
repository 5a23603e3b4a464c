package chargehand.drawing.view;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A place of a side view that is broken out round a bore which ends within the part, with the holes that meet it. All on paper
 * (mm).
 *
 * @param corners of the place, before a freehand line is drawn round it; it runs out of the part where the bore does
 */
record Breakout(List<Point> corners) {
    /** What is shown round a bore. */
    private static final double ROUND = 4;

    /** Less material than this is not left between a break and the outside. */
    private static final double SLIVER = 3;

    /** How far a place runs out of the part where it is open. */
    private static final double OUT = 6;

    Breakout {
        corners = List.copyOf(corners);
    }

    /** One for each run of the part that is hollow. */
    static List<Breakout> of(Look look) {
        List<Breakout> all = new ArrayList<>();
        List<Station> hollow = look.solid().innerAtMost().stations();
        Length start = Length.ZERO;
        for (int i = 0; i < hollow.size(); i++) {
            boolean open = hollow.get(i).radius().isPositive();
            boolean opened = i > 0 && hollow.get(i - 1).radius().isPositive();
            if (open && !opened) {
                start = hollow.get(Math.max(0, i - 1)).at();
            }
            if (open ? i == hollow.size() - 1 : opened) {
                all.add(round(look, start, hollow.get(i).at()));
            }
        }
        return all;
    }

    private static Breakout round(Look look, Length from, Length to) {
        AxialScale scale = look.scale();
        Length length = look.solid().length();
        double left = from.isPositive() ? scale.x(from) - ROUND : -OUT;
        double right = to.isLessThan(length) ? scale.x(to) + ROUND : scale.x(length) + OUT;
        double bore = scale.size(look.solid().hollowAtMost().most(from, to)) + ROUND;
        Profile outer = look.solid().outer();
        double least = scale.size(outer.least(from, to));
        double most = scale.size(outer.most(Length.ZERO, length)) + OUT;
        double high = least - bore < SLIVER ? most : bore;
        Steps steps = new Steps(left, right, high, most);
        for (Across feature : look.solid().across()) {
            if (feature instanceof Across.CrossHole hole && meets(hole, from, to)) {
                steps.open(look, hole);
            }
        }
        return new Breakout(steps.corners());
    }

    private static boolean meets(Across.CrossHole hole, Length from, Length to) {
        Length at = hole.at().length();
        return !at.isLessThan(from) && !at.isMoreThan(to);
    }

    /** Where a hole leads out of a place, on one side of it. */
    private record Window(Side side, double from, double to) {
        private boolean meets(Window other) {
            return side == other.side && from <= other.to && other.from <= to;
        }

        private Window with(Window other) {
            return new Window(side, Math.min(from, other.from), Math.max(to, other.to));
        }
    }

    /** The two sides of a place: level along the bore, out of the part where a hole runs into it. */
    private static final class Steps {
        private double left;
        private double right;
        private final double high;
        private final double most;
        private final List<Window> windows = new ArrayList<>();

        Steps(double left, double right, double high, double most) {
            this.left = left;
            this.right = right;
            this.high = high;
            this.most = most;
        }

        void open(Look look, Across.CrossHole hole) {
            Bearing bearing = Bearing.of(hole, look.turn());
            double x = look.scale().x(hole.at().length());
            double half = look.scale().size(hole.diameter().length()) / 2 + ROUND;
            boolean through = hole.depth() instanceof Depth.Through;
            if (bearing.isUp() || (bearing.isDown() && through)) {
                open(new Window(Side.ABOVE, x - half, x + half));
            }
            if (bearing.isDown() || (bearing.isUp() && through)) {
                open(new Window(Side.BELOW, x - half, x + half));
            }
        }

        private void open(Window window) {
            Window all = windows.stream().filter(window::meets).reduce(window, Window::with);
            windows.removeIf(window::meets);
            windows.add(all);
            windows.sort(Comparator.comparingDouble(Window::from));
            left = Math.min(left, window.from);
            right = Math.max(right, window.to);
        }

        List<Point> corners() {
            List<Point> corners = new ArrayList<>(edge(Side.ABOVE));
            corners.addAll(edge(Side.BELOW).reversed());
            return corners;
        }

        /** One side from left to right. */
        private List<Point> edge(Side side) {
            int out = side.outward();
            List<Point> edge = new ArrayList<>();
            edge.add(new Point(left, out * high));
            for (Window window : windows) {
                if (window.side == side) {
                    edge.add(new Point(window.from, out * high));
                    edge.add(new Point(window.from, out * most));
                    edge.add(new Point(window.to, out * most));
                    edge.add(new Point(window.to, out * high));
                }
            }
            edge.add(new Point(right, out * high));
            return edge;
        }
    }

    /** Takes the place out of what is seen from outside and puts what is seen in the section there. */
    List<Mark> put(List<Mark> outside, List<Mark> section, List<Point> silhouette) {
        List<Point> line = Freehand.round(corners);
        Clip clip = Clip.along(line);
        List<Mark> marks = new ArrayList<>(clip.outside(outside));
        marks.addAll(clip.within(section));
        List<Point> closed = new ArrayList<>(line);
        closed.add(line.getFirst());
        for (List<Point> piece : Clip.along(silhouette).pieces(closed, true)) {
            marks.add(new Mark.Stroke(LineStyle.NARROW, Ink.INK, Path.through(piece)));
        }
        return marks;
    }

    /** The least box that holds it. */
    Box bounds() {
        return Box.around(corners);
    }
}
