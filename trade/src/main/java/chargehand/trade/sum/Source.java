package chargehand.trade.sum;

/**
 * Where a rule or a figure comes from.
 *
 * @param text the document and place, or one of the two honest words for having none
 */
public record Source(String text) {
    /** What every shop does; no document is claimed. */
    public static final Source COMMON_PRACTICE = new Source("common practice");

    /** Follows from the definitions by geometry or arithmetic. */
    public static final Source GEOMETRY = new Source("geometry");

    /** A rule given from memory of the named document, not re-read. */
    public static Source memory(String document) {
        return new Source(document + " (from memory)");
    }

    /** A rule read in the named document. */
    public static Source published(String document) {
        return new Source(document);
    }
}
