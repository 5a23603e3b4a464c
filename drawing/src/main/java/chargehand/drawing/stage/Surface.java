package chargehand.drawing.stage;

import chargehand.measure.Length;

/** A surface that is cut in the set-up. */
public sealed interface Surface {
    /** What it is called out as, such as {@code G 1/2}; empty for none. */
    String label();

    /** The outside from one position to a later one, with the shoulders between and at its ends. */
    record Outside(Length from, Length to, String label) implements Surface {}

    /** The bore from one position to a later one. */
    record Inside(Length from, Length to, String label) implements Surface {}

    /** A face square to the axis. */
    record Face(Length at, String label) implements Surface {}

    /** The flats from one position to a later one; which, the work says. */
    record Flats(Length from, Length to, String label) implements Surface {}

    /** A hole or keyway across, at a position; which, the work says. */
    record Feature(Length at, String label) implements Surface {}
}
