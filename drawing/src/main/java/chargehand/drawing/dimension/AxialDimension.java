package chargehand.drawing.dimension;

import chargehand.drawing.sign.Wording;
import chargehand.measure.Length;

/**
 * A length along the axis that the drawing gives.
 *
 * @param from the face nearer end A
 * @param to the face nearer end B
 * @param wording as it is printed
 */
public record AxialDimension(Length from, Length to, Wording wording) {
    public AxialDimension {
        if (!from.isLessThan(to)) {
            throw new IllegalArgumentException("a length runs from less to more, not " + from + " to " + to);
        }
    }

    public Length length() {
        return to.minus(from);
    }
}
