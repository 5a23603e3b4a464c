package chargehand.drawing.view;

import chargehand.part.shape.Solid;
import java.util.Optional;

/**
 * A turned part as it is looked at.
 *
 * @param solid its shape
 * @param scale where it lies on paper
 * @param cut how much is shown cut
 * @param turned how far it is turned round its axis; empty for however its features show best
 */
public record Look(Solid solid, AxialScale scale, Cut cut, Optional<Bearing> turned) {
    /** A part turned so that its features show best. */
    public Look(Solid solid, AxialScale scale, Cut cut) {
        this(solid, scale, cut, Optional.empty());
    }

    /** How far it is turned round its axis: a bearing to add to each feature's own angle. */
    public Bearing turn() {
        return turned.orElseGet(() -> Bearing.turn(solid, cut));
    }

    /** The same part turned the same way, cut otherwise. */
    Look cut(Cut other) {
        return new Look(solid, scale, other, Optional.of(turn()));
    }
}
