package chargehand.part;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Written;
import chargehand.trade.gear.SpurProportions;
import chargehand.trade.thread.ScrewThread;

/** One stretch of a turned part's outside. */
public sealed interface Section extends Feature {
    /** What all sections have. */
    Stretch stretch();

    /** The diameter of the turned surface at the end nearer A: over crests or corners where there are any. */
    Length diameterTowardsA();

    /** The diameter of the turned surface at the end nearer B. */
    Length diameterTowardsB();

    default Length length() {
        return stretch().length().length();
    }

    @Override
    default String name() {
        return stretch().name();
    }

    @Override
    default Made made() {
        return stretch().made();
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

    /**
     * The straight teeth of a spur wheel, over its whole length.
     *
     * @param teeth how many
     * @param size how large
     * @param pressureAngle of the involute
     * @param outside the diameter over the tips; bracketed where it follows from teeth and size
     */
    record Toothed(Stretch stretch, int teeth, ToothSize size, Angle pressureAngle, Size outside) implements Section {
        /** The diameter over the tips of full-depth teeth, neither drawn out nor turned down, to the nearest nanometre. */
        public static Length fullOutside(int teeth, ToothSize size) {
            return Length.mm(size.module() * (teeth + 2));
        }

        public Length pitchDiameter() {
            return Length.mm(size.module() * teeth);
        }

        /**
         * The diameter at the bottom of the spaces, full-depth teeth being meant. An outside larger than theirs is that of
         * teeth drawn out, so that the bottom moves out with it; a smaller one is tips turned off.
         */
        public Length root() {
            Length drawnOut = Length.most(outside.length().minus(fullOutside(teeth, size)), Length.ZERO);
            double dedendum = SpurProportions.dedendum(pressureAngle) * size.module();
            return Length.most(pitchDiameter().minus(Length.mm(2 * dedendum)).plus(drawnOut), Length.ZERO);
        }

        @Override
        public Length diameterTowardsA() {
            return outside.length();
        }

        @Override
        public Length diameterTowardsB() {
            return outside.length();
        }
    }

    /**
     * A knurled grip.
     *
     * @param diameter over the knurl
     * @param pattern of the ridges
     * @param pitch from ridge to ridge
     */
    record Knurled(Stretch stretch, Size diameter, Knurl pattern, Written pitch) implements Section {
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
     * A section turned to one arc of a circle: a ball end, a swelling, a long fillet.
     *
     * @param towardsA the diameter at the end nearer A, zero where it comes to a point at the end of the part
     * @param towardsB the diameter at the end nearer B, the same way
     * @param radius of the arc, which is no more than half a circle
     * @param bulge which way it swells
     */
    record Curved(Stretch stretch, Size towardsA, Size towardsB, Written radius, Bulge bulge) implements Section {
        @Override
        public Length diameterTowardsA() {
            return towardsA.length();
        }

        @Override
        public Length diameterTowardsB() {
            return towardsB.length();
        }
    }
}
