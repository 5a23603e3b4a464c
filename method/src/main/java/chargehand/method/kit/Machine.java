package chargehand.method.kit;

import chargehand.measure.LengthUnit;

/** A machine of the shop, or its bench. */
public sealed interface Machine permits Lathe, Mill, RadialDrill, Saw, Bench {
    /** What the shop calls it, unique in the kit. */
    String name();

    /** The unit its dials and scales are in. */
    LengthUnit unit();
}
