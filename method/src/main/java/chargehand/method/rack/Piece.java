package chargehand.method.rack;

import chargehand.measure.Written;
import java.util.Optional;

/**
 * One piece on the rack, or several just alike.
 *
 * @param name its mark, such as "B7"
 * @param place where it lies
 * @param material as the shop knows it, such as "gunmetal LG2" or "brass, unknown"
 * @param sure how sure the shop is of the material
 * @param shape its shape and sizes across
 * @param length what is left of it
 * @param count how many lie there just alike, at least one
 * @param condition of its surface
 * @param price what a kilogram costs, in the shop's money; empty where nobody knows
 * @param note what else is known, such as what it was; may be empty
 */
public record Piece(
        String name,
        String place,
        String material,
        Sureness sure,
        Shape shape,
        Written length,
        int count,
        Condition condition,
        Optional<Double> price,
        String note) {
    public Piece {
        if (!length.length().isPositive() || count < 1) {
            throw new IllegalArgumentException("a piece on the rack has a length and there is at least one");
        }
        if (price.filter(each -> !(each >= 0 && each < 1e6)).isPresent()) {
            throw new IllegalArgumentException("a price is zero or more");
        }
    }

    /** What it is, for a person: material, size and place. */
    public String says() {
        return material + ", " + shape.says() + ", " + place;
    }

    /** The state of its surface. */
    public enum Condition {
        /** Hot rolled, with scale, its size to a rough tolerance. */
        BLACK,
        /** Drawn, ground or turned to size. */
        BRIGHT,
        /** Cast, with skin. */
        CAST,
        /** From an earlier life: worn, holed or rusted at the surface. */
        RECLAIMED
    }

    /** How sure the shop is of the material. */
    public enum Sureness {
        /** A certificate for this piece is on file. */
        CERTIFIED,
        /** Bought as such and marked, no certificate. */
        MARKED,
        /** Taken to be so, by colour, spark or where it came from. */
        TAKEN_FOR,
        /** Not known. */
        UNKNOWN
    }
}
