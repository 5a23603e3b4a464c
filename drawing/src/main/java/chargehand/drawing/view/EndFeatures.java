package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.End;
import chargehand.part.OnEnd;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/** What an end view shows besides circles: grooves of bores, holes on circles, flats, the pitch circles of wheels. */
record EndFeatures(Look look, End from) {
    private static final Point AXIS = new Point(0, 0);
    private static final double OVERRUN = 2;

    /** How far beyond a circle a cut-out reaches, so that it surely cuts it (mm). */
    private static final double BEYOND = 0.2;

    /** Two radii nearer than this are one (mm on paper). */
    private static final double SAME = 0.01;

    private double size(Length length) {
        return look.scale().size(length);
    }

    private double direction(double around) {
        return EndView.direction(look, around, from);
    }

    /** The grooves of bores that come out at this end. */
    private List<BoreGroove> grooves() {
        Length end = from == End.A ? Length.ZERO : look.solid().length();
        return look.body().stream()
                .flatMap(body -> BoreGroove.of(body, look.solid()).stream())
                .filter(groove -> groove.opensAt(end))
                .toList();
    }

    /** The circles of the bore, open where grooves run out of it. */
    List<Mark> inside(List<Mark> circles) {
        List<Mark> left = circles;
        for (BoreGroove groove : grooves()) {
            double half = size(groove.width()) / 2;
            double floor = size(groove.floor());
            double edge = edge(groove) - BEYOND;
            left = Clip.along(turned(
                            direction(groove.around()),
                            List.of(
                                    new Point(edge, -half),
                                    new Point(floor, -half),
                                    new Point(floor, half),
                                    new Point(edge, half))))
                    .outside(left);
        }
        for (OnEnd.Slot slot : slots()) {
            left = band(slot).outside(left);
        }
        return slit(left);
    }

    /** How far from the axis a groove's sides meet the bore. */
    private double edge(BoreGroove groove) {
        return chord(groove.radius(), size(groove.width()) / 2);
    }

    /** The circles of the outside, cut off by flats. */
    List<Mark> outside(List<Mark> circles) {
        List<Mark> left = circles;
        for (Across feature : look.solid().across()) {
            if (feature instanceof Across.Flat flat) {
                left = flattened(left, flat);
            }
        }
        for (OnEnd.Slot slot : slots()) {
            left = band(slot).outside(left);
        }
        return slit(left);
    }

    /** The slits that run out at the end that is looked at. */
    private List<Across.Slit> slits() {
        Length end = from == End.A ? Length.ZERO : look.solid().length();
        return look.solid().across().stream()
                .filter(Across.Slit.class::isInstance)
                .map(Across.Slit.class::cast)
                .filter(slit -> slit.begins().equals(end) || slit.ends().equals(end))
                .toList();
    }

    /** The ways that a slit runs outward, on paper. */
    private List<Double> directions(Across.Slit slit) {
        double direction = direction(slit.around().degrees());
        return switch (slit.walls()) {
            case ONE -> List.of(direction);
            case BOTH -> List.of(direction, direction + 180);
        };
    }

    /** Takes slits out of circles. */
    private List<Mark> slit(List<Mark> circles) {
        List<Mark> left = circles;
        for (Across.Slit slit : slits()) {
            double half = size(slit.width().length()) / 2;
            double far = size(look.solid().outer().most(slit.begins(), slit.ends())) + BEYOND;
            for (double direction : directions(slit)) {
                left = Clip.along(turned(
                                direction,
                                List.of(
                                        new Point(0, -half),
                                        new Point(far, -half),
                                        new Point(far, half),
                                        new Point(0, half))))
                        .outside(left);
            }
        }
        return left;
    }

    /** The two sides of a slit, from the bore to the outside. */
    private void slit(Across.Slit slit, Pencil pencil) {
        double half = size(slit.width().length()) / 2;
        double outer = chord(look.solid().outer().most(slit.begins(), slit.ends()), half);
        Length bore = look.solid().innerAtMost().least(slit.begins(), slit.ends());
        for (double direction : directions(slit)) {
            for (double side : new double[] {-half, half}) {
                pencil.line(
                        LineStyle.WIDE,
                        turned(direction, List.of(new Point(chord(bore, half), side), new Point(outer, side))));
            }
        }
    }

    /** How far out something so far off the middle meets a circle. */
    private double chord(Length radius, double off) {
        return Math.sqrt(Math.max(0, Math.pow(size(radius), 2) - off * off));
    }

    /** The slots across the end that is looked at. */
    private List<OnEnd.Slot> slots() {
        return EndSlotLines.slots(look).stream()
                .filter(slot -> slot.end() == from)
                .toList();
    }

    /** How far the end that is looked at reaches from the axis. */
    private double endRadius() {
        return size(
                from == End.A
                        ? look.solid().outer().radiusAfter(Length.ZERO)
                        : look.solid().outer().radiusBefore(look.solid().length()));
    }

    private Clip band(OnEnd.Slot slot) {
        double half = size(slot.width().length()) / 2;
        double far = endRadius() - BEYOND;
        return Clip.along(turned(
                direction(slot.around().degrees()),
                List.of(new Point(-far, -half), new Point(far, -half), new Point(far, half), new Point(-far, half))));
    }

    /** The two sides of a slot, from the outside to the bore and on again. */
    private void slot(OnEnd.Slot slot, Pencil pencil) {
        double half = size(slot.width().length()) / 2;
        double outer = Math.sqrt(Math.max(0, Math.pow(endRadius(), 2) - half * half));
        Profile hollow = look.solid().innerAtMost();
        double bore = size(
                from == End.A
                        ? hollow.radiusAfter(Length.ZERO)
                        : hollow.radiusBefore(look.solid().length()));
        double inner = Math.sqrt(Math.max(0, bore * bore - half * half));
        for (double side : new double[] {-half, half}) {
            for (double way : new double[] {-1, 1}) {
                pencil.line(
                        LineStyle.WIDE,
                        turned(
                                direction(slot.around().degrees()),
                                List.of(new Point(way * inner, side), new Point(way * outer, side))));
            }
        }
    }

    private List<Mark> flattened(List<Mark> circles, Across.Flat flat) {
        Length radius = look.solid().outer().most(flat.begins(), flat.ends());
        double outer = size(radius);
        double height = size(flat.depth().height(radius));
        double half = Math.sqrt(Math.max(0, outer * outer - height * height));
        double far = outer + BEYOND;
        Clip off = Clip.along(turned(
                direction(flat.around().degrees()),
                List.of(new Point(height, -far), new Point(far, -far), new Point(far, far), new Point(height, far))));
        List<Mark> left = new ArrayList<>();
        boolean shown = false;
        for (Mark mark : circles) {
            boolean own = mark instanceof Mark.Circle circle && Math.abs(circle.radius() - outer) < SAME;
            left.addAll(own ? off.outside(List.of(mark)) : List.of(mark));
            shown |= own;
        }
        if (shown) {
            List<Point> chord = turned(
                    direction(flat.around().degrees()), List.of(new Point(height, -half), new Point(height, half)));
            left.add(new Mark.Line(LineStyle.WIDE, Ink.INK, chord.getFirst(), chord.getLast()));
        }
        return left;
    }

    void draw(Pencil pencil) {
        grooves().forEach(groove -> notch(groove, pencil));
        slots().forEach(slot -> slot(slot, pencil));
        slits().forEach(slit -> slit(slit, pencil));
        look.body().ifPresent(body -> FaceHole.of(body, look.solid()).forEach(hole -> holes(hole, pencil)));
        for (Solid.TeethPlace place : look.solid().teeth()) {
            Length pitch =
                    TeethLines.pitchRadius(place, look.solid(), look.scale().scale());
            pencil.put(new Mark.Circle(LineStyle.CHAIN, Ink.INK, AXIS, size(pitch)));
        }
    }

    private void notch(BoreGroove groove, Pencil pencil) {
        double half = size(groove.width()) / 2;
        double floor = size(groove.floor());
        double edge = edge(groove);
        pencil.line(
                LineStyle.WIDE,
                turned(
                        direction(groove.around()),
                        List.of(
                                new Point(edge, -half),
                                new Point(floor, -half),
                                new Point(floor, half),
                                new Point(edge, half))));
    }

    /** Holes that begin in a face at this end, or come through to it. */
    private void holes(FaceHole hole, Pencil pencil) {
        if (hole.feature().end() != from && !hole.through()) {
            return;
        }
        double circle = size(hole.circle().diameter().length()) / 2;
        double radius = size(hole.diameter()) / 2;
        double root = hole.thread()
                .map(thread -> radius + Math.max(ThreadLines.LEAST, size(thread.depth())))
                .orElse(radius);
        pencil.put(new Mark.Circle(LineStyle.CHAIN, Ink.INK, AXIS, circle));
        for (int i = 0; i < hole.circle().count(); i++) {
            double direction = direction(hole.bearing(i));
            Point centre = AXIS.towards(direction, circle);
            pencil.put(new Mark.Circle(LineStyle.WIDE, Ink.INK, centre, radius));
            if (root > radius) {
                pencil.put(BlockView.threeQuarters(centre, root));
            }
            pencil.line(
                    LineStyle.CHAIN,
                    centre.towards(direction, -root - OVERRUN),
                    centre.towards(direction, root + OVERRUN));
        }
    }

    /** Points given outward along a direction (x) and square to it (y), on paper. */
    private static List<Point> turned(double direction, List<Point> points) {
        return points.stream()
                .map(point -> AXIS.towards(direction, point.x()).towards(direction - 90, point.y()))
                .toList();
    }
}
