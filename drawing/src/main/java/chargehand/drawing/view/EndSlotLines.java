package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.part.OnEnd;
import chargehand.part.shape.Profile;
import java.util.ArrayList;
import java.util.List;

/**
 * A slot across an end face in the side view: a notch where it runs towards the viewer, its floor alone where it runs up and
 * down. Lengths are on paper (mm).
 */
final class EndSlotLines {
    private static final double BEYOND = 0.2;

    private final Look look;
    private final OnEnd.Slot slot;
    private final double face;
    private final double floor;
    private final double half;

    private EndSlotLines(Look look, OnEnd.Slot slot) {
        this.look = look;
        this.slot = slot;
        face = look.scale().x(faceAt());
        floor = look.scale().x(floorAt());
        half = look.scale().size(slot.width().length()) / 2;
    }

    private Length faceAt() {
        return slot.end() == End.A ? Length.ZERO : look.solid().length();
    }

    private Length floorAt() {
        return slot.end().other().from(faceAt(), slot.depth().length());
    }

    /** The slots of a look. */
    static List<OnEnd.Slot> slots(Look look) {
        return look.body().stream()
                .flatMap(body -> body.onEnds().stream())
                .filter(OnEnd.Slot.class::isInstance)
                .map(OnEnd.Slot.class::cast)
                .toList();
    }

    /** Takes notches out of an outline that is drawn. */
    static List<Mark> notched(Look look, List<Mark> outline) {
        List<Mark> notched = outline;
        for (OnEnd.Slot slot : slots(look)) {
            EndSlotLines lines = new EndSlotLines(look, slot);
            if (lines.isNotch()) {
                notched = lines.notched(notched);
            }
        }
        return notched;
    }

    static void draw(Look look, AcrossLines lines) {
        for (OnEnd.Slot slot : slots(look)) {
            int before = lines.pencil.marks().size();
            new EndSlotLines(look, slot).draw(lines);
            lines.quieten(slot, before);
        }
    }

    private Bearing bearing() {
        return new Bearing(slot.around().degrees() + look.turn().degrees());
    }

    private boolean isNotch() {
        return bearing().isTowards() || bearing().isAway();
    }

    private List<Mark> notched(List<Mark> marks) {
        double left = face < floor ? face - BEYOND : floor;
        double right = face < floor ? floor : face + BEYOND;
        return Clip.along(List.of(
                        new Point(left, -half), new Point(right, -half), new Point(right, half), new Point(left, half)))
                .outside(marks);
    }

    private void draw(AcrossLines lines) {
        if (isNotch()) {
            lines.pencil.line(
                    LineStyle.WIDE,
                    List.of(
                            new Point(face, -half),
                            new Point(floor, -half),
                            new Point(floor, half),
                            new Point(face, half)));
            return;
        }
        for (Side side : Side.values()) {
            floor(side, lines);
        }
    }

    private void floor(Side side, AcrossLines lines) {
        Length from = Length.least(faceAt(), floorAt());
        Length to = Length.most(faceAt(), floorAt());
        Profile outside = look.solid().outer().cut(from, to);
        Profile inside = look.solid().innerAtMost().cut(from, to);
        boolean cut = side.isCut(look.cut());
        Length inner = Length.most(inside.radiusAfter(from), inside.radiusBefore(to));
        Length outer = slot.end() == End.A ? outside.radiusBefore(to) : outside.radiusAfter(from);
        lines.pencil.line(
                cut ? LineStyle.WIDE : LineStyle.HIDDEN,
                side.at(look.scale(), floorAt(), cut ? inner : Length.ZERO),
                side.at(look.scale(), floorAt(), outer));
        if (cut) {
            List<Point> open = new ArrayList<>();
            Contour.above(outside, look.scale()).forEach(point -> open.add(sided(side, point)));
            Contour.above(inside, look.scale()).reversed().forEach(point -> open.add(sided(side, point)));
            lines.cutOuts.add(open);
        }
    }

    private static Point sided(Side side, Point above) {
        return new Point(above.x(), -side.outward() * above.y());
    }
}
