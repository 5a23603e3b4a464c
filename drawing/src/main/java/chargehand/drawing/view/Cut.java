package chargehand.drawing.view;

/** How much of a turned part is shown cut along its axis. */
public enum Cut {
    /** Seen from outside all over. */
    NONE,
    /** Above the axis from outside, below it cut. */
    HALF,
    /** Cut above and below. */
    FULL;

    boolean above() {
        return this == FULL;
    }

    boolean below() {
        return this != NONE;
    }
}
