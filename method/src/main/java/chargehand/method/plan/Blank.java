package chargehand.method.plan;

import chargehand.measure.Length;

/** The raw work of one piece before the first operation, placed in the finished part's own positions. */
public sealed interface Blank {
    /**
     * Round bar.
     *
     * @param from where it begins along the axis, 0 or less
     * @param to where it ends, at least the part's length; for work at the end of a long bar, where the jaws' far side is
     * @param diameter as it is, black or bright
     * @param onBar whether it is still part of a longer bar beyond the chuck, to be parted off
     */
    record RoundBar(Length from, Length to, Length diameter, boolean onBar) implements Blank {}

    /** Hexagon, square or other regular bar, its flats across as rolled or drawn. */
    record PolygonBar(Length from, Length to, int sides, Length flats, boolean onBar) implements Blank {}

    /**
     * The part itself, come back to be altered: as the drawing says that it came.
     *
     * @param length from end A, at 0, to end B
     * @param largest the largest diameter of its outside
     */
    record OldPart(Length length, Length largest) implements Blank {}

    /** Flat, plate or a squared billet: sizes before any face is cleaned. */
    record Slab(Length length, Length width, Length thickness) implements Blank {}
}
