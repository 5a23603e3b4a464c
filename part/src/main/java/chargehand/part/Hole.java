package chargehand.part;

import chargehand.trade.thread.ScrewThread;

/** A hole square to the top face of a block, placed from its left end (x) and its lower side (y). */
public sealed interface Hole {
    /** What the drawing or the shop calls it, unique within the part. */
    String name();

    Size x();

    Size y();

    Depth depth();

    record Drilled(String name, Size x, Size y, Depth depth, Size diameter) implements Hole {}

    record Reamed(String name, Size x, Size y, Depth depth, Size diameter) implements Hole {}

    record Tapped(String name, Size x, Size y, Depth depth, ScrewThread thread) implements Hole {}

    /**
     * A drilled hole with a counterbore from the top, for the head of a screw.
     *
     * @param depth of the drilled hole, from the top
     * @param diameter of the drilled hole
     * @param head the diameter of the counterbore
     * @param headDepth how deep the counterbore is, flat at the bottom
     */
    record Counterbored(String name, Size x, Size y, Depth depth, Size diameter, Size head, Size headDepth)
            implements Hole {}
}
