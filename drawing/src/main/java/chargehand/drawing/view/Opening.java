package chargehand.drawing.view;

import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch where a contour is broken, because something opens there.
 *
 * @param side of the axis
 * @param inside whether the wall of the bore is broken rather than the outside
 * @param from least x (mm)
 * @param to most x
 */
record Opening(Side side, boolean inside, double from, double to) {
    /** What is left of a contour that runs to the right. */
    List<List<Point>> leaves(List<Point> contour) {
        List<List<Point>> left = new ArrayList<>();
        List<Point> before = clipped(contour, from, true);
        List<Point> after = clipped(contour, to, false);
        if (before.size() > 1) {
            left.add(before);
        }
        if (after.size() > 1) {
            left.add(after);
        }
        return left;
    }

    /** The part of a contour before or after x. */
    private static List<Point> clipped(List<Point> contour, double x, boolean before) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < contour.size(); i++) {
            Point here = contour.get(i);
            if (i > 0) {
                Point last = contour.get(i - 1);
                if (last.x() < x != here.x() < x && last.x() != x) {
                    kept.add(last.between(here, (x - last.x()) / (here.x() - last.x())));
                }
            }
            if (before ? here.x() < x : here.x() >= x) {
                kept.add(here);
            }
        }
        return kept;
    }
}
