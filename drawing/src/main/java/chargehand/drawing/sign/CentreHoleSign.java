package chargehand.drawing.sign;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The sign of a centre hole at an end face (ISO 6411, proportions from memory): an open vee of 60° whose point is on the axis
 * where the hole must stay, the same closed by a bar where it must not, nothing where it may.
 */
public enum CentreHoleSign {
    /** The hole stays in the finished part. */
    MUST_STAY,
    /** The hole may stay. */
    MAY_STAY,
    /** The hole must be gone from the finished part. */
    MUST_NOT_STAY;

    private static final double HALF_ANGLE = 30;

    /** How far a bar stands off the face, in lettering heights. */
    private static final double OFF = 0.4;

    /** The length of a leg, in lettering heights. */
    private static final double LEG = 1.6;

    /**
     * Its marks.
     *
     * @param face where the axis meets the end face
     * @param out the way out of the part: -1 to the left, 1 to the right
     * @param height of the lettering (mm)
     */
    public List<Mark> marks(Point face, int out, double height) {
        double axis = out > 0 ? 0 : 180;
        Point point = point(face, out, height);
        double leg = LEG * height;
        List<Mark> marks = new ArrayList<>();
        if (this != MAY_STAY) {
            for (int side : new int[] {-1, 1}) {
                marks.add(line(point, point.towards(axis + side * HALF_ANGLE, leg)));
            }
        }
        if (this == MUST_NOT_STAY) {
            double half = leg * Math.sin(Math.toRadians(HALF_ANGLE));
            marks.add(line(point.moved(0, -half), point.moved(0, half)));
        }
        return marks;
    }

    /** Where its point lies, and a leader to it begins: off the face where a bar must be told from it. */
    public Point point(Point face, int out, double height) {
        return this == MUST_NOT_STAY ? face.moved(out * OFF * height, 0) : face;
    }

    /** How far it reaches out of the part (mm). */
    public double reach(double height) {
        double leg = LEG * height * Math.cos(Math.toRadians(HALF_ANGLE));
        return switch (this) {
            case MUST_STAY -> leg;
            case MAY_STAY -> 0;
            case MUST_NOT_STAY -> leg + OFF * height;
        };
    }

    private static Mark line(Point from, Point to) {
        return new Mark.Line(LineStyle.SYMBOL, Ink.INK, from, to);
    }
}
