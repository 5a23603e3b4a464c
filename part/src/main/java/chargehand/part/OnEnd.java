package chargehand.part;

import chargehand.measure.Angle;
import chargehand.trade.thread.ScrewThread;

/** Something made into a face of a turned part from one of its ends, off the axis or across it. */
public sealed interface OnEnd extends Feature {
    /** The end it is made from. */
    End end();

    /** Holes along the axis, alike and evenly on a circle. They begin at the first face seen from the end where they stand. */
    sealed interface Holes extends OnEnd {
        HoleCircle circle();

        /** Through what they begin in, or to a depth. */
        Depth depth();
    }

    /**
     * Plain holes along the axis, on a circle.
     *
     * @param depth through what they begin in, or to a full-diameter depth
     */
    record Drilled(String name, End end, HoleCircle circle, Depth depth, Size diameter, Made made) implements Holes {}

    /**
     * Tapped holes along the axis, on a circle.
     *
     * @param depth through what they begin in, or of full thread
     * @param fit the class of fit as written; empty for the series' usual one
     */
    record Tapped(String name, End end, HoleCircle circle, Depth depth, ScrewThread thread, String fit, Made made)
            implements Holes {}

    /**
     * A straight slot across the end face, as for a screwdriver, through the axis and open at both sides.
     *
     * @param depth from the end face
     * @param around the way it runs round the axis, 0° up and down
     */
    record Slot(String name, End end, Size width, Size depth, Angle around, Made made) implements OnEnd {}

    /**
     * What is asked of the centre hole in an end face.
     *
     * @param hole which
     * @param stays whether it stays
     */
    record Centre(String name, End end, CentreHole hole, Stays stays, Made made) implements OnEnd {}
}
