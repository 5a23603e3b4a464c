package chargehand.part;

import java.util.Optional;

/**
 * What every outside section has.
 *
 * @param name what the drawing or the shop calls it, unique within the part; "section 2" where nobody named it
 * @param length along the axis
 * @param atA the corner at the end nearer A
 * @param atB the corner at the end nearer B
 * @param made whether it is to be made, or there already
 * @param was the diameter it has as the work comes in, on a part that comes back to be altered and only where the section
 *     is to be made; no smaller than what is made of it
 */
public record Stretch(String name, Size length, Edge atA, Edge atB, Made made, Optional<Size> was) {
    /** A stretch to be made from the solid. */
    public Stretch(String name, Size length, Edge atA, Edge atB) {
        this(name, length, atA, atB, Made.HERE, Optional.empty());
    }

    /** The same stretch under another name. */
    public Stretch named(String other) {
        return new Stretch(other, length, atA, atB, made, was);
    }
}
