package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;

/**
 * Wheels after ISO 2203: seen from outside a plain solid with the pitch line a narrow chain; cut along the axis, a tooth at
 * either side is left unhatched and the root line is drawn.
 */
record TeethLines(Look look) {
    /** How far the pitch line runs past the teeth (mm). */
    private static final double OVERRUN = 2;

    /** The least room between tip and pitch line on paper (mm), so that they do not run together. */
    static final double LEAST = 0.8;

    void draw(Pencil pencil) {
        AxialScale scale = look.scale();
        for (Solid.TeethPlace place : look.solid().teeth()) {
            Length pitch = pitchRadius(place, look.solid(), scale.scale());
            for (Side side : Side.values()) {
                pencil.line(
                        LineStyle.CHAIN,
                        side.at(scale, place.from(), pitch).moved(-OVERRUN, 0),
                        side.at(scale, place.to(), pitch).moved(OVERRUN, 0));
                if (side.isCut(look.cut())) {
                    Length root = place.root().half();
                    pencil.line(LineStyle.WIDE, side.at(scale, place.from(), root), side.at(scale, place.to(), root));
                }
            }
        }
    }

    /** Where the pitch line is drawn: at the pitch circle, a little nearer the axis where that lies too close to the tips. */
    static Length pitchRadius(Solid.TeethPlace place, Solid solid, double scale) {
        Length tip = solid.outer().most(place.from(), place.to());
        return Length.least(place.pitchDiameter().half(), tip.minus(Length.mm(LEAST / scale)));
    }

    /** A profile with the teeth taken off it, for hatching. */
    static Profile without(Profile profile, Solid solid) {
        Profile without = profile;
        for (Solid.TeethPlace place : solid.teeth()) {
            Profile root = Profile.level(place.from(), place.to(), place.root().half());
            without = without.spliced(without.cut(place.from(), place.to()).smaller(root));
        }
        return without;
    }
}
