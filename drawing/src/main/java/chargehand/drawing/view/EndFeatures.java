package chargehand.drawing.view;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.End;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/** What an end view shows besides circles: grooves of bores, holes on circles, flats, cuts, the pitch circles of wheels. */
record EndFeatures(EndFrame frame, EndCuts cuts) {
    private static final double OVERRUN = 2;

    /** How far beyond a circle a cut-out reaches, so that it surely cuts it (mm). */
    private static final double BEYOND = 0.2;

    /** Two radii nearer than this are one (mm on paper). */
    private static final double SAME = 0.01;

    static EndFeatures of(Look look, End from) {
        EndFrame frame = new EndFrame(look, from);
        return new EndFeatures(frame, new EndCuts(frame));
    }

    private Look look() {
        return frame.look();
    }

    /** The grooves of bores that come out at this end. */
    private List<BoreGroove> grooves() {
        return look().body().stream()
                .flatMap(body -> BoreGroove.of(body, look().solid()).stream())
                .filter(groove -> groove.opensAt(frame.face()))
                .toList();
    }

    /** The circles of the bore, open where grooves and cuts run out of it. */
    List<Mark> inside(List<Mark> circles) {
        List<Mark> left = circles;
        for (BoreGroove groove : grooves()) {
            double half = frame.size(groove.width()) / 2;
            double edge = frame.chord(groove.radius(), half) - BEYOND;
            left = Clip.along(EndFrame.band(frame.direction(groove.around()), edge, frame.size(groove.floor()), half))
                    .outside(left);
        }
        return cuts.out(left);
    }

    /** The circles of the outside, cut off by flats and open where cuts run. */
    List<Mark> outside(List<Mark> circles) {
        List<Mark> left = circles;
        for (Across feature : look().solid().across()) {
            if (feature instanceof Across.Flat flat) {
                left = flattened(left, flat);
            }
        }
        return cuts.out(left);
    }

    private List<Mark> flattened(List<Mark> circles, Across.Flat flat) {
        Length radius = look().solid().outer().most(flat.begins(), flat.ends());
        double outer = frame.size(radius);
        double height = frame.size(flat.depth().height(radius));
        double half = Math.sqrt(Math.max(0, outer * outer - height * height));
        double far = outer + BEYOND;
        double direction = frame.direction(flat.around().degrees());
        Clip off = Clip.along(EndFrame.band(direction, height, far, far));
        List<Mark> left = new ArrayList<>();
        boolean shown = false;
        for (Mark mark : circles) {
            boolean own = mark instanceof Mark.Circle circle && Math.abs(circle.radius() - outer) < SAME;
            left.addAll(own ? off.outside(List.of(mark)) : List.of(mark));
            shown |= own;
        }
        if (shown) {
            List<Point> chord = EndFrame.turned(direction, List.of(new Point(height, -half), new Point(height, half)));
            left.add(new Mark.Line(LineStyle.WIDE, Ink.INK, chord.getFirst(), chord.getLast()));
        }
        return left;
    }

    void draw(Pencil pencil) {
        grooves().forEach(groove -> notch(groove, pencil));
        cuts.draw(pencil);
        look().body().ifPresent(body -> FaceHole.of(body, look().solid()).forEach(hole -> holes(hole, pencil)));
        for (Solid.TeethPlace place : look().solid().teeth()) {
            Length pitch =
                    TeethLines.pitchRadius(place, look().solid(), look().scale().scale());
            pencil.put(new Mark.Circle(LineStyle.CHAIN, Ink.INK, EndFrame.AXIS, frame.size(pitch)));
        }
    }

    private void notch(BoreGroove groove, Pencil pencil) {
        double half = frame.size(groove.width()) / 2;
        double floor = frame.size(groove.floor());
        double edge = frame.chord(groove.radius(), half);
        pencil.line(
                LineStyle.WIDE,
                EndFrame.turned(
                        frame.direction(groove.around()),
                        List.of(
                                new Point(edge, -half),
                                new Point(floor, -half),
                                new Point(floor, half),
                                new Point(edge, half))));
    }

    /** Holes that begin in a face at this end, or come through to it. */
    private void holes(FaceHole hole, Pencil pencil) {
        if (hole.feature().end() != frame.from() && !hole.through()) {
            return;
        }
        double circle = frame.size(hole.circle().diameter().length()) / 2;
        double radius = frame.size(hole.diameter()) / 2;
        double root = hole.thread()
                .map(thread -> radius + Math.max(ThreadLines.LEAST, frame.size(thread.depth())))
                .orElse(radius);
        pencil.put(new Mark.Circle(LineStyle.CHAIN, Ink.INK, EndFrame.AXIS, circle));
        for (int i = 0; i < hole.circle().count(); i++) {
            double direction = frame.direction(hole.bearing(i));
            Point centre = EndFrame.AXIS.towards(direction, circle);
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
}
