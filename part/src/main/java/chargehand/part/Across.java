package chargehand.part;

import chargehand.measure.Angle;
import chargehand.measure.Length;

/** A feature across the axis of a turned part. */
public sealed interface Across extends Feature {
    /** Its angle round the axis, 0° up. */
    Angle around();

    /** Where it begins along the axis, from end A. */
    Length begins();

    /** Where it ends along the axis, from end A. */
    Length ends();

    /** Its width across the axis at the surface; of a flat nothing, since that hangs on what it lies on. */
    Length wide();

    /**
     * A hole square to the axis and meeting it.
     *
     * @param at where its centre lies, from end A
     * @param depth through the whole part, or from the outside surface
     */
    record CrossHole(String name, Size diameter, Size at, Depth depth, Angle around, Made made) implements Across {
        /** A hole to be made. */
        public CrossHole(String name, Size diameter, Size at, Depth depth, Angle around) {
            this(name, diameter, at, depth, around, Made.HERE);
        }

        @Override
        public Length begins() {
            return at.length().minus(diameter.length().half());
        }

        @Override
        public Length ends() {
            return at.length().plus(diameter.length().half());
        }

        @Override
        public Length wide() {
            return diameter.length();
        }
    }

    /**
     * A parallel keyway in the outside.
     *
     * @param width across the axis
     * @param depth from the surface of the section, at the middle of the width before cutting
     * @param from where it begins, from end A
     * @param length along the axis, over round ends where it has them
     */
    record Keyway(String name, Size width, Size depth, Size from, Size length, Angle around, Made made)
            implements Across {
        /** A keyway to be made. */
        public Keyway(String name, Size width, Size depth, Size from, Size length, Angle around) {
            this(name, width, depth, from, length, around, Made.HERE);
        }

        @Override
        public Length begins() {
            return from.length();
        }

        @Override
        public Length ends() {
            return from.length().plus(length.length());
        }

        @Override
        public Length wide() {
            return width.length();
        }
    }

    /**
     * One flat on the outside.
     *
     * @param depth how deep it is cut
     * @param from where it begins, from end A
     * @param length along the axis
     */
    record Flat(String name, FlatDepth depth, Size from, Size length, Angle around, Made made) implements Across {
        @Override
        public Length begins() {
            return from.length();
        }

        @Override
        public Length ends() {
            return from.length().plus(length.length());
        }

        @Override
        public Length wide() {
            return Length.ZERO;
        }
    }
}
