package chargehand.part;

import chargehand.measure.Length;
import chargehand.trade.thread.ScrewThread;

/** One stretch of a turned part's outside. */
public sealed interface Section {
    /** What all sections have. */
    Stretch stretch();

    /** The diameter of the turned surface at the end nearer A: over crests or corners where there are any. */
    Length diameterTowardsA();

    /** The diameter of the turned surface at the end nearer B. */
    Length diameterTowardsB();

    default Length length() {
        return stretch().length().length();
    }

    default String name() {
        return stretch().name();
    }

    /** A plain cylinder. */
    record Round(Stretch stretch, Size diameter) implements Section {
        @Override
        public Length diameterTowardsA() {
            return diameter.length();
        }

        @Override
        public Length diameterTowardsB() {
            return diameter.length();
        }
    }

    /**
     * A cone.
     *
     * @param towardsA the diameter at the end nearer A
     * @param towardsB the diameter at the end nearer B
     * @param taper as the drawing gives it, such as {@code 1 in 12} or {@code 60°} (included); the smaller diameter is
     *     then worked out from it and bracketed. Empty where the drawing gives both diameters
     */
    record Cone(Stretch stretch, Size towardsA, Size towardsB, String taper) implements Section {
        @Override
        public Length diameterTowardsA() {
            return towardsA.length();
        }

        @Override
        public Length diameterTowardsB() {
            return towardsB.length();
        }
    }

    /**
     * Flats evenly round the axis.
     *
     * @param sides how many, 3 to 12
     * @param flats the size over two opposite flats; for an odd number twice the distance from axis to flat
     * @param corners the diameter over the corners: sharp unless the drawing gives a lesser one
     */
    record Polygon(Stretch stretch, int sides, Size flats, Length corners) implements Section {
        /** The diameter over sharp corners of so many flats, to the nearest nanometre. */
        public static Length sharpCorners(int sides, Length flats) {
            return flats.times(1 / Math.cos(Math.PI / sides));
        }

        public Length sharpCorners() {
            return sharpCorners(sides, flats.length());
        }

        @Override
        public Length diameterTowardsA() {
            return corners;
        }

        @Override
        public Length diameterTowardsB() {
            return corners;
        }
    }

    /**
     * An outside thread, over its whole length.
     *
     * @param thread which
     * @param fit the class of fit as written, such as {@code 6g}; empty for the series' usual one
     */
    record Threaded(Stretch stretch, ScrewThread thread, String fit) implements Section {
        @Override
        public Length diameterTowardsA() {
            return thread.major();
        }

        @Override
        public Length diameterTowardsB() {
            return thread.major();
        }
    }

    /**
     * A groove or undercut: narrower than its neighbours, cut with a tool of its own.
     *
     * @param diameter at the bottom
     */
    record Groove(Stretch stretch, Size diameter) implements Section {
        @Override
        public Length diameterTowardsA() {
            return diameter.length();
        }

        @Override
        public Length diameterTowardsB() {
            return diameter.length();
        }
    }
}
