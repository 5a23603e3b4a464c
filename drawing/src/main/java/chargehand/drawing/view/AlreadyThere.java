package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Section;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws what was there when the work came in as an adjacent part is drawn, in narrow lines of long dash and two dots, so that
 * what is to be made stands out in wide ones.
 */
record AlreadyThere(Look look) {
    /** Lines at the border between old and new belong to the new (mm). */
    private static final double BORDER = 0.02;

    /** How far beyond an old surface its lines are looked for (mm). */
    private static final double BEYOND = 0.1;

    /** Two radii nearer than this are one: rounding of half diameters. */
    private static final Length SAME = new Length(2);

    List<Mark> restyled(List<Mark> marks) {
        return look.body()
                .filter(Body.Turned::isAltered)
                .map(body -> restyled(marks, body))
                .orElse(marks);
    }

    private List<Mark> restyled(List<Mark> marks, Body.Turned body) {
        List<Mark> restyled = marks;
        for (List<Point> place : outsides(body)) {
            restyled = quiet(restyled, place);
        }
        for (List<Point> place : insides(body)) {
            restyled = quiet(restyled, place);
        }
        return restyled;
    }

    private static List<Mark> quiet(List<Mark> marks, List<Point> place) {
        Clip clip = Clip.along(place);
        List<Mark> all = new ArrayList<>(clip.outside(marks));
        clip.within(marks).forEach(mark -> all.add(quiet(mark)));
        return all;
    }

    static Mark quiet(Mark mark) {
        return switch (mark) {
            case Mark.Line line
            when line.style() == LineStyle.WIDE ->
                new Mark.Line(LineStyle.DOUBLE_CHAIN, line.ink(), line.from(), line.to());
            case Mark.Stroke stroke
            when stroke.style() == LineStyle.WIDE ->
                new Mark.Stroke(LineStyle.DOUBLE_CHAIN, stroke.ink(), stroke.path());
            case Mark.Circle circle
            when circle.style() == LineStyle.WIDE ->
                new Mark.Circle(LineStyle.DOUBLE_CHAIN, circle.ink(), circle.centre(), circle.radius());
            case Mark.Line line -> line;
            case Mark.Stroke stroke -> stroke;
            case Mark.Circle circle -> circle;
            case Mark.Fill fill -> fill;
            case Mark.Disc disc -> disc;
            case Mark.Words words -> words;
        };
    }

    /** Runs of sections that were there, each as the ring between the bore and beyond the outside, above and below. */
    private List<List<Point>> outsides(Body.Turned body) {
        List<List<Point>> places = new ArrayList<>();
        List<Section> outside = body.outside();
        int start = 0;
        while (start < outside.size()) {
            int end = start;
            while (end < outside.size() && outside.get(end).isThere()) {
                end++;
            }
            if (end > start) {
                Stretch run = new Stretch(
                        edge(body, start, BORDER), edge(body, end, -BORDER), body.start(start), body.start(end));
                places.add(ring(run, Side.ABOVE));
                places.add(ring(run, Side.BELOW));
            }
            start = end + 1;
        }
        return places;
    }

    /** A run of sections: where it begins and ends on paper, and on the part. */
    private record Stretch(double left, double right, Length from, Length to) {}

    /** The x of a border between sections, drawn a little inward; beyond the end face at an end of the part. */
    private double edge(Body.Turned body, int index, double inward) {
        double x = look.scale().x(body.start(index));
        boolean free = index == 0 || index == body.outside().size();
        return free ? x - Math.signum(inward) * BEYOND : x + inward;
    }

    private List<Point> ring(Stretch run, Side side) {
        double most = look.scale().size(look.solid().outer().most(run.from, run.to)) + BEYOND;
        List<Point> ring = new ArrayList<>();
        ring.add(new Point(run.left, side.outward() * most));
        ring.add(new Point(run.right, side.outward() * most));
        List<Point> wall = new ArrayList<>();
        if (side.isCut(look.cut())) {
            Profile hollow = look.solid().innerAtMost().cut(run.from, run.to);
            Contour.above(hollow, look.scale())
                    .forEach(point -> wall.add(new Point(
                            Math.clamp(point.x(), run.left, run.right), side.outward() * (-point.y() + BORDER))));
        } else {
            wall.add(new Point(run.left, 0));
            wall.add(new Point(run.right, 0));
        }
        ring.addAll(wall.reversed());
        return ring;
    }

    /** The walls of bores that were there and are not bored away, from the axis to a little beyond the wall. */
    private List<List<Point>> insides(Body.Turned body) {
        List<List<Point>> places = new ArrayList<>();
        for (Bore bore : body.inside()) {
            if (bore.isThere()) {
                for (Side side : Side.values()) {
                    if (side.isCut(look.cut())) {
                        walls(bore).forEach(wall -> places.add(inside(wall, side)));
                    }
                }
            }
        }
        return places;
    }

    /** Where the hollow is as wide as a bore. */
    private List<Profile> walls(Bore bore) {
        Length radius = Solid.mouthDiameter(bore).half();
        List<Station> hollow = look.solid().innerAtMost().stations();
        List<Profile> walls = new ArrayList<>();
        for (int i = 1; i < hollow.size(); i++) {
            Station before = hollow.get(i - 1);
            Station after = hollow.get(i);
            if (before.radius().isWithin(SAME, radius)
                    && after.radius().isWithin(SAME, radius)
                    && before.at().isLessThan(after.at())) {
                walls.add(Profile.level(before.at(), after.at(), radius));
            }
        }
        return walls;
    }

    private List<Point> inside(Profile wall, Side side) {
        double radius = look.scale().size(wall.radiusAfter(wall.start()));
        double left = look.scale().x(wall.start()) + BORDER;
        double right = look.scale().x(wall.end()) - BORDER;
        double near = side.outward() * (radius - BEYOND);
        double far = side.outward() * (radius + BORDER / 2);
        return List.of(new Point(left, near), new Point(right, near), new Point(right, far), new Point(left, far));
    }
}
