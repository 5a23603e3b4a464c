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
}
