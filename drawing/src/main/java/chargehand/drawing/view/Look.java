package chargehand.drawing.view;

import chargehand.part.Body;
import chargehand.part.shape.Solid;
import java.util.Optional;

/**
 * A turned part as it is looked at.
 *
 * @param solid its shape
 * @param scale where it lies on paper
 * @param cut how much is shown cut
 * @param turned how far it is turned round its axis; empty for however its features show best
 * @param body the description, for what the solid does not hold: knurls, what is cut into bores and faces, what was there
 *     before; empty for work in progress
 */
public record Look(Solid solid, AxialScale scale, Cut cut, Optional<Bearing> turned, Optional<Body.Turned> body) {
    /** A part turned so that its features show best. */
    public Look(Solid solid, AxialScale scale, Cut cut) {
        this(solid, scale, cut, Optional.empty());
    }

    /** Work in progress. */
    public Look(Solid solid, AxialScale scale, Cut cut, Optional<Bearing> turned) {
        this(solid, scale, cut, turned, Optional.empty());
    }

    /** A part as described, turned so that its features show best. */
    public static Look of(Body.Turned body, AxialScale scale, Cut cut) {
        return new Look(Solid.of(body), scale, cut, Optional.empty(), Optional.of(body));
    }

    /** How far it is turned round its axis: a bearing to add to each feature's own angle. */
    public Bearing turn() {
        return turned.orElseGet(() -> Bearing.turn(this));
    }

    /** The same part turned the same way, cut otherwise. */
    Look cut(Cut other) {
        return new Look(solid, scale, other, Optional.of(turn()), body);
    }

    /** The same part turned and cut the same way, at another scale. */
    Look at(AxialScale other) {
        return new Look(solid, other, cut, Optional.of(turn()), body);
    }
}
