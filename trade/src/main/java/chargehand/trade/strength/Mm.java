package chargehand.trade.strength;

import chargehand.measure.Length;
import chargehand.measure.LengthText;

/** Lengths inside a formula, which are all in millimetres there. */
final class Mm {
    private Mm() {}

    static String say(Length length) {
        return LengthText.mmFigures(length, LengthText.MICROMETRE);
    }
}
