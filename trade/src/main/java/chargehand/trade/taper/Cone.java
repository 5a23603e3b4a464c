package chargehand.trade.taper;

import chargehand.measure.Length;
import java.util.Optional;

/**
 * A taper with as much as is known of the part that has it.
 *
 * @param taper how steep
 * @param large diameter at the large end
 * @param small diameter at the small end, possibly nothing for a point
 * @param length along the axis between the two
 */
public record Cone(Taper taper, Optional<Length> large, Optional<Length> small, Optional<Length> length) {
    /** A cone with two of its three sizes: the third follows from the taper; with fewer it stays unknown. */
    public static Cone of(Taper taper, Optional<Length> large, Optional<Length> small, Optional<Length> length) {
        if (large.isPresent() && length.isPresent() && small.isEmpty()) {
            return new Cone(taper, large, Optional.of(large.get().minus(taper.changeOver(length.get()))), length);
        }
        if (small.isPresent() && length.isPresent() && large.isEmpty()) {
            return new Cone(taper, Optional.of(small.get().plus(taper.changeOver(length.get()))), small, length);
        }
        if (large.isPresent() && small.isPresent() && length.isEmpty()) {
            Length between = large.get().minus(small.get()).times(taper.oneIn());
            return new Cone(taper, large, small, Optional.of(between));
        }
        return new Cone(taper, large, small, length);
    }

    /** The cone through both ends and the length between them. */
    public static Cone between(Length large, Length small, Length length) {
        return new Cone(
                Taper.between(large, small, length), Optional.of(large), Optional.of(small), Optional.of(length));
    }
}
