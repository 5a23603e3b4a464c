package chargehand.part.check;

/** What a draughtsman would point out about a part that can stand. */
public enum PartRemark {
    /** A thread that ends at a larger shoulder without a groove. */
    THREAD_AT_SHOULDER,
    /** A thread begun at a sharp corner. */
    THREAD_WITHOUT_CHAMFER,
    /** A bore that lies wholly within a larger one. */
    BORE_WITHIN_LARGER,
    /** A hole across that lies on the corner between two sections. */
    HOLE_ON_CORNER,
    /** A material that the tables do not know. */
    MATERIAL_UNKNOWN
}
