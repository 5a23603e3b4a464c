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

    /**
     * A hole for a taper pin of 1 in 50, through the whole part and square to the axis; its large end lies at its angle
     * round the axis.
     *
     * @param nominal the size of the pin: the diameter at its small end (ISO 2339)
     * @param at where its centre lies, from end A
     * @param with the part that must be in place when it is drilled and reamed; empty where it is made in this part alone
     */
    record TaperPin(String name, Size nominal, Size at, String with, Angle around, Made made) implements Across {
        /** How much the diameter grows over one unit of length. */
        public static final double TAPER = 1.0 / 50;

        /** A parallel hole of the pin's size in its place, as it is drilled and as it is drawn. */
        public CrossHole drilled() {
            return new CrossHole(name, nominal, at, new Depth.Through(), around, made);
        }

        /** The hole at its large end, in a part so thick. */
        public Length largeEnd(Length thickness) {
            return nominal.length().plus(thickness.times(TAPER));
        }

        @Override
        public Length begins() {
            return at.length().minus(nominal.length().half());
        }

        @Override
        public Length ends() {
            return at.length().plus(nominal.length().half());
        }

        @Override
        public Length wide() {
            return nominal.length();
        }
    }

    /**
     * A straight cut along the axis, as with a saw: through one wall of a hollow part, so that it springs, or through the
     * whole part.
     *
     * @param from where it begins, from end A
     * @param length along the axis
     * @param walls how much it goes through
     */
    record Slit(String name, Size width, Size from, Size length, Walls walls, Angle around, Made made)
            implements Across {
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

    /** How much of a part a slit goes through. */
    enum Walls {
        /** From the outside into the bore. */
        ONE("one"),
        /** Right through, out at the other side. */
        BOTH("both");

        private final String text;

        Walls(String text) {
            this.text = text;
        }

        /** As a part file writes it. */
        public String text() {
            return text;
        }
    }
}
