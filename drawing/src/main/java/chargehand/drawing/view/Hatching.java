package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Hatches what is cut: lines of one slope and pitch in every view, so that pieces of one part match. Where outlines overlap
 * an odd number of times is cut; a hole's outline within the part's takes it out again.
 */
final class Hatching {
    /** From line to line (mm). */
    private static final double PITCH = 2.5;

    /** An outline that lies so near the hatching's own slope (degrees) would run along it. */
    private static final double ALONG = 8;

    /** A shorter outline along the hatching does not matter (mm of the part, so that all its views are hatched alike). */
    private static final double SHORT = 5;

    private static final double STEEP = 45;
    private static final double FLAT = 30;

    /** Shorter pieces are dust (mm). */
    private static final double LEAST = 0.2;

    private final double rise;
    private final double step;

    private Hatching(double degrees) {
        rise = degrees == STEEP ? 1 : Math.tan(Math.toRadians(degrees));
        step = PITCH * Math.sqrt(1 + rise * rise);
    }

    /** Hatching at 45°. */
    static Hatching steep() {
        return new Hatching(STEEP);
    }

    /** The hatching of a part: at 45°, or at 30° where a cone of the part lies at 45° itself (ISO 128-3, from memory). */
    static Hatching of(Solid solid) {
        boolean along = Stream.of(solid.outer(), solid.innerAtMost()).anyMatch(Hatching::liesAlong);
        return along ? new Hatching(FLAT) : steep();
    }

    private static boolean liesAlong(Profile profile) {
        List<Station> stations = profile.stations();
        return IntStream.range(1, stations.size()).anyMatch(i -> {
            double along = stations.get(i).at().minus(stations.get(i - 1).at()).mm();
            double out =
                    stations.get(i).radius().minus(stations.get(i - 1).radius()).mm();
            double slope = Math.toDegrees(Math.atan2(Math.abs(out), along));
            return Math.abs(slope - STEEP) < ALONG && Math.hypot(along, out) > SHORT;
        });
    }

    /** The hatching of the area within closed outlines. */
    List<Mark> within(List<List<Point>> outlines) {
        double from = outlines.stream()
                .flatMap(List::stream)
                .mapToDouble(this::line)
                .min()
                .orElse(0);
        double to = outlines.stream()
                .flatMap(List::stream)
                .mapToDouble(this::line)
                .max()
                .orElse(0);
        List<Mark> marks = new ArrayList<>();
        for (long number = (long) Math.ceil(from / step); number * step < to; number++) {
            addLine(outlines, number * step, marks);
        }
        return marks;
    }

    /** Lines of hatching are those on which this is the same. */
    private double line(Point point) {
        return rise * point.x() + point.y();
    }

    private void addLine(List<List<Point>> outlines, double line, List<Mark> marks) {
        List<Double> crossings = new ArrayList<>();
        for (List<Point> outline : outlines) {
            for (int i = 0; i < outline.size(); i++) {
                addCrossing(outline.get(i), outline.get((i + 1) % outline.size()), line, crossings);
            }
        }
        crossings.sort(null);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double enter = crossings.get(i);
            double leave = crossings.get(i + 1);
            if (leave - enter > LEAST) {
                marks.add(new Mark.Line(
                        LineStyle.HATCH,
                        Ink.INK,
                        new Point(enter, line - rise * enter),
                        new Point(leave, line - rise * leave)));
            }
        }
    }

    /** Adds the x where an edge crosses a line, its first end counted and its last one not. */
    private void addCrossing(Point from, Point to, double line, List<Double> crossings) {
        double before = line(from) - line;
        double after = line(to) - line;
        if (before < 0 != after < 0) {
            crossings.add(from.x() + (to.x() - from.x()) * before / (before - after));
        }
    }
}
