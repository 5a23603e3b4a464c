package chargehand.drawing.stage;

import chargehand.measure.Length;

/**
 * A length along the axis that matters for setting.
 *
 * @param from one end, in the part's positions
 * @param to the other end, on either side of it
 * @param text as it is to be read, such as {@code 1 7/16 out of jaws}
 */
public record SettingSize(Length from, Length to, String text) {
    public SettingSize {
        if (from.equals(to)) {
            throw new IllegalArgumentException("a setting size has two ends");
        }
    }
}
