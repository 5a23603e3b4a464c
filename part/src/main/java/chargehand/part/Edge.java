package chargehand.part;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Written;
import java.util.Optional;

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

    /**
     * An edge prepared for welding: bevelled from the outside down to a root that is left square.
     *
     * @param joint how the other part is prepared
     * @param depth of the preparation, square to the axis: the figure before the symbol of ISO 2553
     * @param angle of this part's bevel to its face: half the included angle of a V
     * @param gap between the roots, where the drawing gives one
     */
    record WeldPreparation(Joint joint, Written depth, Angle angle, Optional<Written> gap) implements Edge {
        /** How far the bevel reaches along the axis. */
        public Length reach() {
            return depth.length().times(angle.tan());
        }

        /** The bevel as a chamfer, which is how it is cut. */
        public Chamfer chamfer() {
            return new Chamfer(Written.of(reach(), depth.unit()), Angle.degrees(90 - angle.degrees()));
        }
    }

    /** The butt welds of ISO 2553 that an edge is bevelled for. */
    enum Joint {
        /** Both parts bevelled alike. */
        SINGLE_V("V"),
        /** This part bevelled, the other square. */
        SINGLE_BEVEL("bevel");

        private final String text;

        Joint(String text) {
            this.text = text;
        }

        /** As a part file writes it. */
        public String text() {
            return text;
        }
    }
}
