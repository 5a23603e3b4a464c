package chargehand.drawing.view;

/** How much of a turned part is shown cut along its axis. */
public enum Cut {
    /** Seen from outside all over. */
    NONE,
    /** Seen from outside, broken out round the bores that end within the part. */
    LOCAL,
    /** Above the axis from outside, below it cut. */
    HALF,
    /** Cut above and below. */
    FULL;

    boolean above() {
        return this == FULL;
    }

    boolean below() {
        return this == HALF || this == FULL;
    }
}
