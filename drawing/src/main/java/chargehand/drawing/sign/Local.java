package chargehand.drawing.sign;

import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.Arrays;
import java.util.List;

/**
 * A frame laid on the paper: {@code along} a base line and {@code up} from it.
 *
 * @param origin where the base line begins
 * @param turned how far the base line is turned (degrees, anticlockwise as seen)
 */
public record Local(Point origin, double turned) {
    public static Local at(Point origin) {
        return new Local(origin, 0);
    }

    /** The place so far along the base line and up from it (mm). */
    public Point at(double along, double up) {
        return origin.towards(turned, along).towards(turned + 90, up);
    }

    /** The same frame with its origin further along and up. */
    public Local moved(double along, double up) {
        return new Local(at(along, up), turned);
    }

    /** An open path through places given as along, up, along, up … */
    Path through(double... places) {
        return Path.through(points(places));
    }

    /** A closed path through places given as along, up, along, up … */
    Path round(double... places) {
        return Path.round(points(places));
    }

    private List<Point> points(double... places) {
        Point[] points = new Point[places.length / 2];
        Arrays.setAll(points, i -> at(places[2 * i], places[2 * i + 1]));
        return List.of(points);
    }
}
