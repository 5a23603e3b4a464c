package chargehand.method.kit;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;

/**
 * A power saw.
 *
 * @param largest the largest round, or the widest flat, it cuts
 * @param kerf what the blade turns to swarf at each cut
 * @param shortestHeld the shortest length its vice holds while the cut is made
 * @param squareness how far out of square a cut may be across its width, to be faced off
 */
public record Saw(String name, LengthUnit unit, Length largest, Length kerf, Length shortestHeld, Length squareness)
        implements Machine {
    public Saw {
        if (!largest.isPositive() || !kerf.isPositive() || shortestHeld.isNegative() || squareness.isNegative()) {
            throw new IllegalArgumentException("a saw has a largest size and a kerf of more than zero");
        }
    }
}
