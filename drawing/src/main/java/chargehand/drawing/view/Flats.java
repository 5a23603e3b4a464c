package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * The flats of polygons in a side view. A polygon whose number of sides divides by four lies with a flat on top and one
 * towards the viewer, marked with crossed diagonals; any other with a corner on top, so that a hexagon shows three faces.
 */
final class Flats {
    private static final int CHORDS = 12;

    private Flats() {}

    /** How far up or down the polygon reaches, over flats or corners as it lies. */
    private static double reach(Solid.FlatsPlace place, Side side) {
        boolean flat = PolygonOutline.flatOnTop(place.sides()) || (place.sides() % 2 == 1 && side == Side.BELOW);
        return (flat ? place.across() : place.corners()).half().mm();
    }

    /** The outer profile as it is seen from the side: turned, but no further than the polygons reach. */
    static Profile seen(Solid solid, Side side) {
        Profile seen = solid.outer();
        for (Solid.FlatsPlace place : solid.flats()) {
            seen = capped(seen, place, Length.mm(reach(place, side)));
        }
        return seen;
    }

    private static Profile capped(Profile profile, Solid.FlatsPlace place, Length most) {
        List<Station> stations = new ArrayList<>();
        if (profile.start().isLessThan(place.from())) {
            stations.addAll(profile.cut(profile.start(), place.from()).stations());
        }
        Profile within = profile.cut(place.from(), place.to());
        stations.addAll(
                within.smaller(Profile.level(place.from(), place.to(), most)).stations());
        if (place.to().isLessThan(profile.end())) {
            stations.addAll(profile.cut(place.to(), profile.end()).stations());
        }
        return new Profile(stations);
    }

    /** The outlines of the flats that the viewer sees, and the diagonals of one that faces the viewer. */
    static void draw(Look look, Pencil pencil) {
        for (Solid.FlatsPlace place : look.solid().flats()) {
            PolygonOutline polygon = PolygonOutline.of(place);
            for (double flat : polygon.flats()) {
                if (Math.cos(Math.toRadians(flat)) > 1e-9) {
                    outline(look, place, polygon, flat, pencil);
                }
            }
            if (PolygonOutline.flatOnTop(place.sides())) {
                diagonals(look, place, polygon, pencil);
            }
        }
    }

    /** One flat: both its edges along the axis, and its ends, which curve where the corners are chamfered. */
    private static void outline(Look look, Solid.FlatsPlace place, PolygonOutline polygon, double flat, Pencil pencil) {
        Profile turned = look.solid().outer().cut(place.from(), place.to());
        List<Point> atA = new ArrayList<>();
        List<Point> atB = new ArrayList<>();
        for (int i = 0; i <= CHORDS; i++) {
            double across = polygon.halfFlat() * (2.0 * i / CHORDS - 1);
            double radius = polygon.flat() / Math.cos(Math.toRadians(across));
            double height = radius * Math.sin(Math.toRadians(flat + across));
            atA.add(point(look, first(turned.stations(), radius), height));
            atB.add(point(look, first(turned.stations().reversed(), radius), height));
        }
        pencil.line(LineStyle.WIDE, uncut(look, Contour.thinned(atA)));
        pencil.line(LineStyle.WIDE, uncut(look, Contour.thinned(atB)));
        for (int end : new int[] {0, CHORDS}) {
            pencil.line(LineStyle.WIDE, uncut(look, List.of(atA.get(end), atB.get(end))));
        }
    }

    /** Where, coming from one end, the turned profile first reaches a radius; the last place where it never does. */
    private static Length first(List<Station> stations, double radius) {
        for (int i = 0; i < stations.size(); i++) {
            double here = stations.get(i).radius().mm();
            if (here >= radius - 1e-6) {
                if (i == 0) {
                    return stations.getFirst().at();
                }
                double last = stations.get(i - 1).radius().mm();
                Length from = stations.get(i - 1).at();
                return from.plus(stations.get(i).at().minus(from).times((radius - last) / (here - last)));
            }
        }
        return stations.getLast().at();
    }

    /** The part of a line that lies in halves not cut, cut off at the axis. */
    private static List<Point> uncut(Look look, List<Point> line) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            Point here = line.get(i);
            if (i > 0 && isCut(look, line.get(i - 1)) != isCut(look, here)) {
                Point last = line.get(i - 1);
                kept.add(last.between(here, last.y() / (last.y() - here.y())));
            }
            if (!isCut(look, here)) {
                kept.add(here);
            }
        }
        return kept;
    }

    private static boolean isCut(Look look, Point point) {
        return point.y() > 0 ? look.cut().below() : look.cut().above();
    }

    /** Narrow crossed diagonals on the flat that faces the viewer; half of them in a half section. */
    private static void diagonals(Look look, Solid.FlatsPlace place, PolygonOutline polygon, Pencil pencil) {
        double half = polygon.flat() * Math.tan(Math.toRadians(polygon.halfFlat()));
        for (double height : new double[] {half, -half}) {
            Point from = point(look, place.from(), height);
            pencil.line(LineStyle.NARROW, uncut(look, List.of(from, point(look, place.to(), -height))));
        }
    }

    private static Point point(Look look, Length at, double height) {
        return new Point(look.scale().x(at), -look.scale().scale() * height);
    }
}
