package chargehand.trade.taper;

import chargehand.measure.Length;
import chargehand.trade.sum.Source;
import java.util.Optional;

/**
 * A machine taper of a standard series.
 *
 * @param name as it is called, such as "Morse 3"
 * @param taper how steep
 * @param large diameter at the gauge line
 * @param small diameter at the small end of the plug, where the standard gives one
 * @param length of the plug from gauge line to small end, where the standard gives one
 * @param source where the figures come from
 */
public record StandardTaper(
        String name, Taper taper, Length large, Optional<Length> small, Optional<Length> length, Source source) {}
