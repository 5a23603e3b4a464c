package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.view.Side;

/**
 * The side of a view along which lengths are stacked, nearest first.
 *
 * @param origin where both the way along and the way out are 0
 * @param turned the way along (degrees, 0 to the right, 90 up)
 * @param out 1 where the way out is to the left of the way along, -1 where it is to the right
 */
record Rail(Point origin, double turned, int out) {
    /** Above or below a view, from left to right, outward from its axis. */
    static Rail level(Side side) {
        return new Rail(new Point(0, 0), 0, -side.outward());
    }

    /** At the right of a view whose right edge lies at x, upward from y = 0. */
    static Rail right(double x) {
        return new Rail(new Point(x, 0), 90, -1);
    }

    Point at(double along, double outward) {
        return new Local(origin, turned).at(along, out * outward);
    }

    /** The frame of a dimension line that begins there; its words stand on its upper or left side. */
    Local frame(double along, double outward) {
        return new Local(at(along, outward), turned);
    }

    /** Where words stand that run outward from there, at the end of an extension line, to be read from below or the right. */
    Local endwise(double along, double outward, Inscription words) {
        double half = (words.ascent() - words.descent()) / 2;
        if (turned == 0) {
            double start = out > 0 ? outward : outward + words.width();
            return new Local(at(along + half, start), 90);
        }
        return new Local(at(along - half, outward), 0);
    }
}
