package chargehand.part;

import chargehand.trade.thread.ScrewThread;

/** Something made into a face of a turned part from one of its ends, off the axis or across it. */
public sealed interface OnEnd extends Feature {
    /** The end it is made from. */
    End end();

    /**
     * Plain holes along the axis, on a circle. They begin at the first face that is seen from the end where they stand.
     *
     * @param depth through what they begin in, or to a full-diameter depth
     */
    record Drilled(String name, End end, HoleCircle circle, Depth depth, Size diameter, Made made) implements OnEnd {}

    /**
     * Tapped holes along the axis, on a circle.
     *
     * @param depth through what they begin in, or of full thread
     * @param fit the class of fit as written; empty for the series' usual one
     */
    record Tapped(String name, End end, HoleCircle circle, Depth depth, ScrewThread thread, String fit, Made made)
            implements OnEnd {}
}
