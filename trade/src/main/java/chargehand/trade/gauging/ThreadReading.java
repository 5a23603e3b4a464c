package chargehand.trade.gauging;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Pitch;
import java.util.Optional;

/**
 * What was measured on a thread of unknown kind.
 *
 * @param diameter over the crests of an outside thread, or across the bore of an inside one
 * @param pitch as read by pitch gauge or counted
 * @param angle between the flanks, if a gauge was tried
 * @param taper whether it tapers, if looked for
 * @param inside whether it is a nut or a hole
 * @param trust how far the readings are to be trusted
 */
record ThreadReading(
        Length diameter, Pitch pitch, Optional<Angle> angle, Optional<Boolean> taper, boolean inside, Trust trust) {

    /**
     * How far the readings are to be trusted.
     *
     * @param slack the diameter may be misread by this either way
     * @param worn the crests may be worn by at most this, on diameter
     */
    record Trust(Length slack, Length worn) {}
}
