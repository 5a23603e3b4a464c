package chargehand.part;

import chargehand.measure.Angle;

/** A feature across the axis of a turned part. */
public sealed interface Across {
    /** What the drawing or the shop calls it, unique within the part. */
    String name();

    /**
     * A hole square to the axis and meeting it.
     *
     * @param at where its centre lies, from end A
     * @param depth through the whole part, or from the outside surface
     * @param around its angle round the axis, 0° up
     */
    record CrossHole(String name, Size diameter, Size at, Depth depth, Angle around) implements Across {}

    /**
     * A parallel keyway in the outside.
     *
     * @param width across the axis
     * @param depth from the surface of the section, at the middle of the width before cutting
     * @param from where it begins, from end A
     * @param length along the axis, over round ends where it has them
     * @param around its angle round the axis, 0° up
     */
    record Keyway(String name, Size width, Size depth, Size from, Size length, Angle around) implements Across {}
}
