package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
    private final Look look;
    private final Pencil pencil = new Pencil();

    private EndView(Look look, End from) {
        this.look = look;
        solid = look.solid();
        scale = look.scale().scale();
        this.from = from;
    }

    /** The view from an end of a part of which nothing but its solid is known. */
    public static View of(Solid solid, double scale, End from) {
        return of(new Look(solid, AxialScale.of(scale), Cut.NONE), from);
    }

    /** The view from an end, the part turned round its axis as it is in its side view. */
    public static View of(Look look, End from) {
        EndView view = new EndView(look, from);
        EndFeatures features = EndFeatures.of(look, from);
        view.outside();
        view.pencil.replace(features.outside(view.pencil.marks()));
        Pencil bored = new Pencil();
        view.inside(bored);
        view.pencil.putAll(features.inside(bored.marks()));
        view.threads();
        features.draw(view.pencil);
        double reach = look.scale()
                        .size(look.solid()
                                .outer()
                                .most(Length.ZERO, look.solid().length()))
                + OVERRUN;
        view.pencil.line(LineStyle.CHAIN, new Point(-reach, 0), new Point(reach, 0));
        view.pencil.line(LineStyle.CHAIN, new Point(0, -reach), new Point(0, reach));
        return View.of(view.pencil.marks());
    }

    /**
     * The direction on paper in which something lies (degrees, 0 to the right): seen from end A the viewer's side of the side
     * view is right.
     *
     * @param around its own angle round the axis
     */
    public static double direction(Look look, double around, End from) {
        double bearing = around + look.turn().degrees();
        return from == End.A ? 90 - bearing : 90 + bearing;
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
                circle(pencil, radius);
                quieten(edge);
            }
            most = isThreadChamfer(edge) ? most : Math.max(most, radius);
        }
        double silhouette =
                scale * solid.outer().most(Length.ZERO, solid.length()).mm();
        boolean rounded = silhouette > most + NEAR;
        if (rounded) {
            circle(pencil, silhouette);
        }
        for (Solid.FlatsPlace place : solid.flats()) {
            polygon(place, shows(solid, place, from) ? LineStyle.WIDE : LineStyle.HIDDEN);
        }
    }

    /** Draws the last circle as an adjacent part is drawn, where what it bounds was there already. */
    private void quieten(Station edge) {
        look.body().filter(body -> isThere(body, edge)).ifPresent(body -> {
            List<Mark> marks = new ArrayList<>(pencil.marks());
            marks.add(AlreadyThere.quiet(marks.removeLast()));
            pencil.replace(marks);
        });
    }

    /** Whether all that may bound a circle was there: the sections at an edge that are as large as it. */
    private static boolean isThere(Body.Turned body, Station edge) {
        List<Section> at = IntStream.range(0, body.outside().size())
                .filter(i -> !edge.at().isLessThan(body.start(i)) && !edge.at().isMoreThan(body.start(i + 1)))
                .mapToObj(body.outside()::get)
                .toList();
        List<Section> own = at.stream()
                .filter(section -> section.diameterTowardsA().half().isWithin(NOTHING, edge.radius())
                        || section.diameterTowardsB().half().isWithin(NOTHING, edge.radius()))
                .toList();
        return body.isAltered() && (own.isEmpty() ? at : own).stream().allMatch(Section::isThere);
    }

    private boolean isThere(Solid.FlatsPlace place) {
        return look.body().stream()
                .flatMap(body -> body.outside().stream())
                .anyMatch(section -> section.name().equals(place.name()) && section.isThere());
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
        Mark outline = new Mark.Stroke(style, Ink.INK, new Path(start, runs, true));
        pencil.put(isThere(place) ? AlreadyThere.quiet(outline) : outline);
    }

    private Point corner(PolygonOutline polygon, double degrees) {
        return new Point(0, 0).towards(degrees, scale * polygon.corner());
    }

    /** What shows looking into the bore: ever smaller circles. */
    private void inside(Pencil bored) {
        Profile hollow = solid.innerAtMost();
        Length mouth = from == End.A ? hollow.radiusAfter(Length.ZERO) : hollow.radiusBefore(solid.length());
        double least = scale * mouth.mm();
        circle(bored, least);
        for (Station edge : seenFrom(Contour.edges(hollow))) {
            double radius = scale * edge.radius().mm();
            if (radius < least - NEAR) {
                circle(bored, radius);
                least = radius;
            }
        }
    }

    private static void circle(Pencil pencil, double radius) {
        if (radius > NEAR) {
            pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, new Point(0, 0), radius));
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
