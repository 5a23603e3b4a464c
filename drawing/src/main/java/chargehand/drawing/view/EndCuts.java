package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.End;
import chargehand.part.OnEnd;
import java.util.List;

/** What is sawn or milled open at an end: slots across it, and slits that run out there. */
record EndCuts(EndFrame frame) {
    /** How far short of a circle a cut-out ends that leaves it whole, or beyond one that it cuts (mm). */
    private static final double BEYOND = 0.2;

    private Look look() {
        return frame.look();
    }

    private List<OnEnd.Slot> slots() {
        return EndSlotLines.slots(look()).stream()
                .filter(slot -> slot.end() == frame.from())
                .toList();
    }

    private List<Across.Slit> slits() {
        return look().solid().across().stream()
                .filter(Across.Slit.class::isInstance)
                .map(Across.Slit.class::cast)
                .filter(slit ->
                        slit.begins().equals(frame.face()) || slit.ends().equals(frame.face()))
                .toList();
    }

    /** Takes slots and slits out of circles. */
    List<Mark> out(List<Mark> circles) {
        List<Mark> left = circles;
        for (OnEnd.Slot slot : slots()) {
            double far = frame.size(endRadius()) - BEYOND;
            left = Clip.along(EndFrame.band(
                            direction(slot), -far, far, half(slot.width().length())))
                    .outside(left);
        }
        for (Across.Slit slit : slits()) {
            double far = frame.size(outer(slit)) + BEYOND;
            for (double direction : directions(slit)) {
                left = Clip.along(EndFrame.band(
                                direction, 0, far, half(slit.width().length())))
                        .outside(left);
            }
        }
        return left;
    }

    /** Their sides, from the bore to the outside. */
    void draw(Pencil pencil) {
        for (OnEnd.Slot slot : slots()) {
            double half = half(slot.width().length());
            for (double direction : new double[] {direction(slot), direction(slot) + 180}) {
                sides(direction, half, frame.chord(boreRadius(), half), frame.chord(endRadius(), half), pencil);
            }
        }
        for (Across.Slit slit : slits()) {
            double half = half(slit.width().length());
            Length bore = look().solid().innerAtMost().least(slit.begins(), slit.ends());
            for (double direction : directions(slit)) {
                sides(direction, half, frame.chord(bore, half), frame.chord(outer(slit), half), pencil);
            }
        }
    }

    private static void sides(double direction, double half, double near, double far, Pencil pencil) {
        for (double side : new double[] {-half, half}) {
            pencil.line(
                    LineStyle.WIDE, EndFrame.turned(direction, List.of(new Point(near, side), new Point(far, side))));
        }
    }

    private double half(Length width) {
        return frame.size(width) / 2;
    }

    private double direction(OnEnd.Slot slot) {
        return frame.direction(slot.around().degrees());
    }

    /** The ways that a slit runs outward, on paper. */
    private List<Double> directions(Across.Slit slit) {
        double direction = frame.direction(slit.around().degrees());
        return switch (slit.walls()) {
            case ONE -> List.of(direction);
            case BOTH -> List.of(direction, direction + 180);
        };
    }

    private Length outer(Across.Slit slit) {
        return look().solid().outer().most(slit.begins(), slit.ends());
    }

    private Length endRadius() {
        return frame.from() == End.A
                ? look().solid().outer().radiusAfter(Length.ZERO)
                : look().solid().outer().radiusBefore(frame.face());
    }

    private Length boreRadius() {
        return frame.from() == End.A
                ? look().solid().innerAtMost().radiusAfter(Length.ZERO)
                : look().solid().innerAtMost().radiusBefore(frame.face());
    }
}
