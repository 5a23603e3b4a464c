package chargehand.method.stock;

import chargehand.measure.Length;

/**
 * What is added to the part's own length.
 *
 * @param facing taken off each end of each piece to clean it
 * @param slot what is lost between two pieces: the parting tool's or the saw's width
 * @param stub what is held and thrown away with each piece, its parting slot included; nothing unless a stub is left on
 * @param held what stays behind at the end of each length: in the chuck or in the saw's vice
 */
public record Allowances(Length facing, Length slot, Length stub, Length held) {
    /** The length of one blank. */
    public Length blank(Length part) {
        return part.plus(facing.times(2)).plus(stub);
    }

    /** The bar that one piece takes, the slot to the next included. */
    public Length perPiece(Length part) {
        return blank(part).plus(slot);
    }

    /**
     * How many pieces come out of a length. Sawn pieces need one slot less than there are pieces, unless an end stays in the
     * vice; the last piece made at the end of a bar still has to be parted from what is held.
     */
    public int piecesIn(Length stock, Length part) {
        Length usable = held.isZero() ? stock.plus(slot) : stock.minus(held);
        return usable.isLessThan(perPiece(part))
                ? 0
                : (int) (usable.nanometres() / perPiece(part).nanometres());
    }
}
