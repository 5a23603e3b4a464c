package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * A turned part seen along its axis from one end, the axis at the origin: what stands out beyond what lies before it, and what
 * can be seen looking into the bore.
 */
public final class EndView {
    private static final double OVERRUN = 3;

    /** Two circles nearer than this on paper are drawn as one (mm). */
    private static final double NEAR = 0.5;

    private static final Length NOTHING = new Length(2);

    private final Solid solid;
    private final double scale;
    private final End from;
    private final Pencil pencil = new Pencil();

    private EndView(Solid solid, double scale, End from) {
        this.solid = solid;
        this.scale = scale;
        this.from = from;
    }

    /** The view from an end. */
    public static View of(Solid solid, double scale, End from) {
        EndView view = new EndView(solid, scale, from);
        view.outside();
        view.inside();
        view.threads();
        double reach = scale * solid.outer().most(Length.ZERO, solid.length()).mm() + OVERRUN;
        view.pencil.line(LineStyle.CHAIN, new Point(-reach, 0), new Point(reach, 0));
        view.pencil.line(LineStyle.CHAIN, new Point(0, -reach), new Point(0, reach));
        return View.of(view.pencil.marks());
    }

    /** Whether a polygon's corners show from an end, nothing larger standing before them. */
    public static boolean shows(Solid solid, Solid.FlatsPlace place, End from) {
        Length flat = place.across().half();
        boolean fromA = from == End.A;
        if (fromA ? place.from().isZero() : place.to().equals(solid.length())) {
            return true;
        }
        Profile before = fromA
                ? solid.outer().cut(Length.ZERO, place.from())
                : solid.outer().cut(place.to(), solid.length());
        return before.most(before.start(), before.end()).isLessThan(flat);
    }

    private List<Station> seenFrom(List<Station> stations) {
        return from == End.A ? stations : stations.reversed();
    }

    private void outside() {
        double most = 0;
        List<Station> edges = seenFrom(Contour.edges(solid.outer()));
        for (Station edge : edges) {
            double radius = scale * edge.radius().mm();
            if (radius > most + NEAR && !isOnPolygon(edge) && !isThreadChamfer(edge)) {
                circle(LineStyle.WIDE, radius);
            }
            most = isThreadChamfer(edge) ? most : Math.max(most, radius);
        }
        double silhouette =
                scale * solid.outer().most(Length.ZERO, solid.length()).mm();
        boolean rounded = silhouette > most + NEAR;
        if (rounded) {
            circle(LineStyle.WIDE, silhouette);
        }
        for (Solid.FlatsPlace place : solid.flats()) {
            polygon(place, shows(solid, place, from) ? LineStyle.WIDE : LineStyle.HIDDEN);
        }
    }

    private boolean isOnPolygon(Station edge) {
        return solid.flats().stream()
                .anyMatch(place -> !edge.at().isLessThan(place.from())
                        && !edge.at().isMoreThan(place.to())
                        && !edge.radius().isLessThan(place.across().half()));
    }

    /** The small end of a chamfered thread, which is not shown. */
    private boolean isThreadChamfer(Station edge) {
        return solid.threads().stream()
                .anyMatch(place -> !place.inside()
                        && (edge.at().equals(place.from()) || edge.at().equals(place.to()))
                        && edge.radius().isLessThan(place.thread().major().half()));
    }

    private void polygon(Solid.FlatsPlace place, LineStyle style) {
        PolygonOutline polygon = PolygonOutline.of(place);
        List<Path.Run> runs = new ArrayList<>();
        Point start = corner(polygon, polygon.flats().getFirst() - polygon.halfFlat());
        for (double flat : polygon.flats()) {
            Point begin = corner(polygon, flat - polygon.halfFlat());
            if (begin.distance(runs.isEmpty() ? start : runs.getLast().to()) > 1e-6) {
                runs.add(new Path.Bend(begin, scale * polygon.corner(), false));
            }
            runs.add(new Path.Straight(corner(polygon, flat + polygon.halfFlat())));
        }
        if (start.distance(runs.getLast().to()) > 1e-6) {
            runs.add(new Path.Bend(start, scale * polygon.corner(), false));
        }
        pencil.put(new Mark.Stroke(style, Ink.INK, new Path(start, runs, true)));
    }

    private Point corner(PolygonOutline polygon, double degrees) {
        return new Point(0, 0).towards(degrees, scale * polygon.corner());
    }

    /** What shows looking into the bore: ever smaller circles. */
    private void inside() {
        Profile hollow = solid.innerAtMost();
        Length mouth = from == End.A ? hollow.radiusAfter(Length.ZERO) : hollow.radiusBefore(solid.length());
        double least = scale * mouth.mm();
        circle(LineStyle.WIDE, least);
        for (Station edge : seenFrom(Contour.edges(hollow))) {
            double radius = scale * edge.radius().mm();
            if (radius < least - NEAR) {
                circle(LineStyle.WIDE, radius);
                least = radius;
            }
        }
    }

    private void circle(LineStyle style, double radius) {
        if (radius > NEAR) {
            pencil.put(new Mark.Circle(style, Ink.INK, new Point(0, 0), radius));
        }
    }

    /** The root of a thread at the end looked at: three quarters of a narrow circle. */
    private void threads() {
        Length end = from == End.A ? Length.ZERO : solid.length();
        for (Solid.ThreadPlace place : solid.threads()) {
            Length face = from == End.A ? place.from() : place.to();
            if (face.isWithin(NOTHING, end)) {
                double crest = scale
                        * (place.inside()
                                        ? place.thread().minorInternal()
                                        : place.thread().major())
                                .half()
                                .mm();
                double depth = Math.max(scale * place.thread().depth().mm(), ThreadLines.LEAST);
                double root = place.inside() ? crest + depth : crest - depth;
                pencil.put(BlockView.threeQuarters(new Point(0, 0), root));
            }
        }
    }
}
