package chargehand.part;

import chargehand.measure.Angle;
import chargehand.trade.thread.ScrewThread;

/**
 * One feature of a turned part's inside, on the axis, made from one end. Where bores overlap the larger counts: a stepped
 * bore is a small one through and larger ones less deep.
 */
public sealed interface Bore extends Feature {
    /** The end it is made from. */
    End from();

    Depth depth();

    /** A drilled hole; a blind one ends in the point of a 118° drill beyond its depth. */
    record Drilled(String name, End from, Depth depth, Size diameter, Made made) implements Bore {
        /** A bore to be made. */
        public Drilled(String name, End from, Depth depth, Size diameter) {
            this(name, from, depth, diameter, Made.HERE);
        }
    }

    /** A bored hole, true to size and flat at the bottom. */
    record Bored(String name, End from, Depth depth, Size diameter, Edge mouth, Made made) implements Bore {
        /** A bore to be made. */
        public Bored(String name, End from, Depth depth, Size diameter, Edge mouth) {
            this(name, from, depth, diameter, mouth, Made.HERE);
        }
    }

    /** A reamed hole; a blind one is drilled deeper to make room. */
    record Reamed(String name, End from, Depth depth, Size diameter, Edge mouth, Made made) implements Bore {
        /** A bore to be made. */
        public Reamed(String name, End from, Depth depth, Size diameter, Edge mouth) {
            this(name, from, depth, diameter, mouth, Made.HERE);
        }
    }

    /** A counterbore: flat at the bottom, for a head or a seat. */
    record Counterbored(String name, End from, Depth depth, Size diameter, Edge mouth, Made made) implements Bore {
        /** A bore to be made. */
        public Counterbored(String name, End from, Depth depth, Size diameter, Edge mouth) {
            this(name, from, depth, diameter, mouth, Made.HERE);
        }
    }

    /**
     * A tapped hole.
     *
     * @param depth of full thread
     * @param fit the class of fit as written; empty for the series' usual one
     */
    record Tapped(String name, End from, Depth depth, ScrewThread thread, String fit, Made made) implements Bore {
        /** A bore to be made. */
        public Tapped(String name, End from, Depth depth, ScrewThread thread, String fit) {
            this(name, from, depth, thread, fit, Made.HERE);
        }
    }

    /**
     * A cone narrowing inward from the end, a seat or a countersink. Its depth follows from the angle and what it meets.
     *
     * @param mouth the diameter at the end face
     * @param angle the included angle, more than 0° and less than 180°
     * @param to the diameter it narrows to
     */
    record Coned(String name, End from, Depth depth, Size mouth, Angle angle, Size to, Made made) implements Bore {
        /** A bore to be made. */
        public Coned(String name, End from, Depth depth, Size mouth, Angle angle, Size to) {
            this(name, from, depth, mouth, angle, to, Made.HERE);
        }
    }
}
