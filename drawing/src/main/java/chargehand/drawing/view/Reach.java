package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;

/**
 * How far the outside and the bore of a part reach from the axis in a view (mm on paper, never negative).
 *
 * @param look the part as it is looked at
 */
public record Reach(Look look) {
    /** The outside at a position, the larger where it jumps. */
    public double outside(Side side, Length at) {
        return larger(Flats.seen(look.solid(), side), at);
    }

    /** The furthest of the outside. */
    public double outside(Side side) {
        Profile seen = Flats.seen(look.solid(), side);
        return look.scale().size(seen.most(seen.start(), seen.end()));
    }

    /** The bore at a position, the larger where it jumps. */
    public double inside(Length at) {
        return larger(look.solid().innerAtMost(), at);
    }

    private double larger(Profile profile, Length at) {
        return look.scale().size(Length.most(profile.radiusBefore(at), profile.radiusAfter(at)));
    }
}
