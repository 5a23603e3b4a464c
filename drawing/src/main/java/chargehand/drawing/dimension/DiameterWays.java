package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Arrow;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * The ways a diameter's dimension line can stand upright across a view: with an arrow at either side, or in a half section
 * with one arrow and its other end a little past the axis.
 *
 * @param radius on paper (mm)
 * @param sides where it touches: both, or the one that shows it
 */
record DiameterWays(double radius, List<Side> sides, Wording wording) {
    /** How far a line with one arrow runs past the axis (mm). */
    private static final double PAST = 5;

    private static final double LIFT = 0.9;
    private static final double GAP = 1;
    private static final double OVERSHOOT = 2;
    private static final double CLEAR = 1.5;
    private static final int TIERS = 6;
    private static final double IN_ZONE = 8;
    private static final double PER_TIER = 3;
    private static final double ON_AXIS = 5;
    private static final List<Double> PARTS = List.of(0.5, 0.35, 0.65, 0.2, 0.8);

    private Inscription text() {
        return Subject.inscription(wording);
    }

    private boolean isWhole() {
        return sides.size() == 2;
    }

    /** Within a step from one x to another, where words and line have room. */
    List<Placing> within(double from, double to) {
        double room = to - from;
        double thick = LIFT + text().ascent() + text().descent() + 2 * CLEAR;
        List<Placing> ways = new ArrayList<>();
        if (room >= thick) {
            for (double part : PARTS) {
                double x = from + CLEAR + LIFT + text().ascent() + text().descent() + part * (room - thick);
                addWithin(x, 2 * Math.abs(part - 0.5), ways);
            }
        }
        return ways;
    }

    private void addWithin(double x, double dislike, List<Placing> ways) {
        double long_ = Arrow.LENGTH + text().width() + 2 * CLEAR;
        if (radius >= long_) {
            ways.add(upright(Placing.pen(), x, -sides.getFirst().outward() * beside(), dislike));
        } else if (isWhole() && 2 * radius >= LinearDimension.need(wording)) {
            ways.add(upright(Placing.pen(), x, 0, ON_AXIS + dislike));
        }
    }

    /**
     * Beyond an end face, with extension lines from where the diameter ends.
     *
     * @param corner the x at which the diameter ends
     * @param face the x of the end face
     * @param out -1 to the left, 1 to the right
     */
    List<Placing> beyond(double corner, double face, int out) {
        List<Placing> ways = new ArrayList<>();
        for (int tier = 0; tier < TIERS; tier++) {
            double x = face + out * (LengthStack.FIRST + LengthStack.NEXT * tier);
            Placing.Pen pen = Placing.pen();
            for (Side side : sides) {
                double y = side.outward() * radius;
                pen.line(Placing.Kind.EXTENSION, new Point(corner + out * GAP, y), new Point(x + out * OVERSHOOT, y));
            }
            double middle = isWhole() ? 0 : -sides.getFirst().outward() * beside();
            ways.add(upright(pen, x, middle, IN_ZONE + PER_TIER * tier));
        }
        return ways;
    }

    /** How far from the axis the middle of words stands that lie next to an arrow, inside it. */
    private double beside() {
        double next = radius - Arrow.LENGTH - CLEAR - text().width() / 2;
        return Math.min(next, Math.max(0, radius - Arrow.LENGTH) / 2);
    }

    /**
     * The line at x.
     *
     * @param middle how far above the axis the words' middle stands
     */
    private Placing upright(Placing.Pen pen, double x, double middle, double cost) {
        double low = isWhole() || sides.contains(Side.BELOW) ? radius : PAST;
        double high = isWhole() || sides.contains(Side.ABOVE) ? radius : PAST;
        double half = text().width() / 2;
        Local frame = new Local(new Point(x, 0), 90);
        if (isWhole() && 2 * radius < LinearDimension.need(wording)) {
            new LinearDimension(frame.moved(-radius, 0), 2 * radius, wording).draw(pen, true);
            return pen.at(cost + ON_AXIS);
        }
        pen.line(
                Placing.Kind.DIMENSION,
                frame.at(Math.min(-low, middle - half), 0),
                frame.at(Math.max(high, middle + half), 0));
        if (sides.contains(Side.ABOVE)) {
            pen.arrow(frame.at(radius, 0), 90);
        }
        if (sides.contains(Side.BELOW)) {
            pen.arrow(frame.at(-radius, 0), 270);
        }
        return pen.label(text(), frame.moved(middle - half, LIFT + text().descent()))
                .at(cost);
    }
}
