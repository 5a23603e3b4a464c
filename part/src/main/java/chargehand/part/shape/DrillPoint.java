package chargehand.part.shape;

import chargehand.measure.Angle;
import chargehand.measure.Length;

/** The point of an ordinary twist drill, which a blind drilled hole ends in. */
public final class DrillPoint {
    /** The included angle of an ordinary point (common practice). */
    public static final Angle ANGLE = Angle.degrees(118);

    private DrillPoint() {}

    /** How far the point of a drill reaches beyond its full diameter. */
    public static Length height(Length diameter) {
        return diameter.half().times(1 / ANGLE.half().tan());
    }
}
