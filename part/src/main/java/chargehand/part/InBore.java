package chargehand.part;

import chargehand.measure.Angle;

/** Something cut into the wall of a bore. */
public sealed interface InBore extends Feature {
    /** The name of the bore it is cut in. */
    String bore();

    /**
     * A parallel keyway along the whole of its bore.
     *
     * @param width across
     * @param depth above the bore, at the middle of the width
     * @param around its angle round the axis, 0° up
     */
    record Keyway(String name, String bore, Size width, Size depth, Angle around, Made made) implements InBore {}

    /**
     * An oil groove straight along its bore, round at the bottom.
     *
     * @param width across
     * @param depth below the wall of the bore
     * @param run how far it goes
     * @param around its angle round the axis, 0° up
     */
    record OilGroove(String name, String bore, Size width, Size depth, Run run, Angle around, Made made)
            implements InBore {}

    /** How far an oil groove goes along its bore. */
    sealed interface Run {
        /** Along the whole bore, open at both ends. */
        record Open() implements Run {}

        /**
         * Over a stretch; an end within the bore is closed.
         *
         * @param from where it begins, from end A
         * @param length along the axis
         */
        record Part(Size from, Size length) implements Run {}
    }

    /**
     * A groove all round, wider than its bore: for oil, a ring, or for a tool to run out in.
     *
     * @param from where it begins, from end A
     * @param width along the axis
     * @param diameter at the bottom
     */
    record Recess(String name, String bore, Size from, Size width, Size diameter, Made made) implements InBore {}
}
