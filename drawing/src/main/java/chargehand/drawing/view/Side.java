package chargehand.drawing.view;

import chargehand.drawing.picture.Point;
import chargehand.measure.Length;

/** The half of a side view above the axis or below it. */
public enum Side {
    ABOVE,
    BELOW;

    Side other() {
        return this == ABOVE ? BELOW : ABOVE;
    }

    boolean isCut(Cut cut) {
        return this == ABOVE ? cut.above() : cut.below();
    }

    /** The way from the axis outward on paper: -1 up, 1 down. */
    public int outward() {
        return this == ABOVE ? -1 : 1;
    }

    public Point at(AxialScale scale, Length at, Length radius) {
        return this == ABOVE ? scale.above(at, radius) : scale.below(at, radius);
    }
}
