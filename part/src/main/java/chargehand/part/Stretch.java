package chargehand.part;

/**
 * What every outside section has.
 *
 * @param name what the drawing or the shop calls it, unique within the part; "section 2" where nobody named it
 * @param length along the axis
 * @param atA the corner at the end nearer A
 * @param atB the corner at the end nearer B
 */
public record Stretch(String name, Size length, Edge atA, Edge atB) {}
