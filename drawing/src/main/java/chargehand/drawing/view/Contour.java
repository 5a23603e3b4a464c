package chargehand.drawing.view;

import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/** A profile as points on paper, with the many chords of an arc thinned to what the eye can tell apart. */
final class Contour {
    /** How far a thinned line may stray (mm on paper): a tenth of the narrow line. */
    private static final double STRAY = 0.02;

    private Contour() {}

    static List<Point> above(Profile profile, AxialScale scale) {
        return thinned(profile.stations().stream()
                .map(station -> scale.above(station.at(), station.radius()))
                .toList());
    }

    static List<Point> below(Profile profile, AxialScale scale) {
        return mirrored(above(profile, scale));
    }

    /** The same points on the other side of the axis. */
    static List<Point> mirrored(List<Point> points) {
        return points.stream().map(point -> new Point(point.x(), -point.y())).toList();
    }

    /** Leaves out points that lie on the line between their neighbours (Douglas and Peucker 1973). */
    static List<Point> thinned(List<Point> points) {
        int furthest = 0;
        double most = STRAY;
        Segment whole = new Segment(points.getFirst(), points.getLast());
        for (int i = 1; i < points.size() - 1; i++) {
            double off = whole.distance(points.get(i));
            if (off > most) {
                most = off;
                furthest = i;
            }
        }
        if (furthest == 0) {
            return List.of(points.getFirst(), points.getLast());
        }
        List<Point> kept = new ArrayList<>(thinned(points.subList(0, furthest + 1)));
        kept.removeLast();
        kept.addAll(thinned(points.subList(furthest, points.size())));
        return kept;
    }

    /** The places where a profile has a corner that shows as an edge across the view. */
    static List<Station> edges(Profile profile) {
        return new Corners(profile.stations()).edges();
    }
}
