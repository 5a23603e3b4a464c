package chargehand.method.kit;

import chargehand.measure.Length;

/**
 * A vice.
 *
 * @param name what the shop calls it
 * @param width of the jaws
 * @param opening the widest it opens
 * @param jawHeight above its bed
 */
public record Vice(String name, Length width, Length opening, Length jawHeight) {
    public Vice {
        if (!width.isPositive() || !opening.isPositive() || !jawHeight.isPositive()) {
            throw new IllegalArgumentException("a vice has a width, an opening and a height of jaw");
        }
    }
}
