package chargehand.part;

/** Anything about a turned part that has a name of its own. */
public sealed interface Feature permits Section, Bore, Across, InBore, OnEnd {
    /** What the drawing or the shop calls it, unique within the part. */
    String name();

    /** Whether it is to be made, or there already. */
    Made made();

    /** Whether it was there when the work came in. */
    default boolean isThere() {
        return made() == Made.ALREADY;
    }
}
