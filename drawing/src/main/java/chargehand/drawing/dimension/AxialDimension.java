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

    /** The faces it runs between. */
    FacePair faces() {
        return new FacePair(from, to);
    }

    /** Whether it stands in brackets: to be read, not to be worked to. */
    public boolean isBracketed() {
        return wording.toString().startsWith("(");
    }

    public Length length() {
        return to.minus(from);
    }
}
