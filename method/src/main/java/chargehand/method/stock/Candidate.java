package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.rack.Piece;
import chargehand.part.End;
import chargehand.trade.sum.Step;
import java.util.List;

/**
 * A piece of stock that a part will come out of, cut up in one way.
 *
 * @param piece on the rack
 * @param raw its shape and sizes across
 * @param asDrawn whether a surface of the stock is left as drawn: the largest rounds and what is screwed on them, the
 *     flats, or a face of a block
 * @param match how its material answers what was asked
 * @param way how it is cut up
 * @param allowances what is added to the part's own length
 * @param gives how many pieces come out and what is left
 * @param working how it adds up
 * @param cautions what to mind about the piece
 */
public record Candidate(
        Piece piece,
        Raw raw,
        boolean asDrawn,
        Match match,
        Way way,
        Allowances allowances,
        Yield gives,
        List<Step> working,
        List<String> cautions) {
    public Candidate {
        working = List.copyOf(working);
        cautions = List.copyOf(cautions);
    }

    /** How a material answers what was asked. */
    public enum Match {
        /** The same material. */
        SAME,
        /** Another that does as well, with a caution. */
        EQUIVALENT
    }

    /**
     * The raw work of one piece, in the finished part's own positions. For a block it is the slab as sawn.
     *
     * @param part the part's finished length along the bar
     * @param headstock the end of the part on whose side the bar or the stub is held
     */
    public Blank blank(Length part, End headstock) {
        return switch (raw) {
            case Raw.Round(Length diameter) ->
                way == Way.AS_IT_CAME
                        ? new Blank.OldPart(part, diameter)
                        : new Blank.RoundBar(from(headstock), to(part, headstock), diameter, onBar());
            case Raw.Polygon(int sides, Length flats) ->
                new Blank.PolygonBar(from(headstock), to(part, headstock), sides, flats, onBar());
            case Raw.Flat flat -> slab(flat);
        };
    }

    private boolean onBar() {
        return way == Way.FROM_BAR;
    }

    /** What is held beyond the part: the stub, or for work at the end of a bar the slot and what is in the jaws. */
    private Length beyond() {
        return onBar() ? allowances.slot().plus(allowances.held()) : allowances.stub();
    }

    private Length from(End headstock) {
        Length facing = allowances.facing();
        return (headstock == End.A ? facing.plus(beyond()) : facing).negated();
    }

    private Length to(Length part, End headstock) {
        Length faced = part.plus(allowances.facing());
        return headstock == End.B ? faced.plus(beyond()) : faced;
    }

    private Blank.Slab slab(Raw.Flat flat) {
        return new Blank.Slab(
                size(flat, Raw.Direction.LENGTH), size(flat, Raw.Direction.WIDTH), size(flat, Raw.Direction.THICKNESS));
    }

    private Length size(Raw.Flat flat, Raw.Direction direction) {
        if (direction == flat.lies().along()) {
            return gives.blank();
        }
        return direction == flat.lies().across() ? flat.width() : flat.thickness();
    }
}
