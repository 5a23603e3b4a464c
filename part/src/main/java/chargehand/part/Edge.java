package chargehand.part;

import chargehand.measure.Angle;
import chargehand.measure.Written;

/**
 * What is done to a corner where a section ends. On the side of a larger neighbour the corner is a hollow one and only a
 * radius is possible; otherwise it is a free edge.
 */
public sealed interface Edge {
    /** Left as cut, burr taken off. */
    record Plain() implements Edge {}

    /**
     * A chamfer.
     *
     * @param length its length along the axis
     * @param angle its angle to the axis, 45° unless the drawing says otherwise
     */
    record Chamfer(Written length, Angle angle) implements Edge {}

    /** A radius: rounding a free edge or filling a hollow corner. */
    record Radius(Written radius) implements Edge {}
}
