package chargehand.part.check;

/** Why a part cannot be as it is described. */
public enum PartFault {
    /** A size of nought or less, or less than can be seen. */
    SIZE_TOO_SMALL,
    /** A size beyond what any shop of this kind handles. */
    SIZE_TOO_LARGE,
    /** Limits that reach down to nothing. */
    LIMITS_TOO_WIDE,
    /** Letters of a hole on a shaft, or of a shaft on a hole. */
    LETTERS_OF_OTHER_KIND,
    /** More features than one part has. */
    TOO_MANY_FEATURES,
    /** Two features of one name. */
    NAME_TWICE,
    /** A cone whose two diameters are equal. */
    CONE_IS_LEVEL,
    /** A cone so steep that it is a face. */
    CONE_TOO_STEEP,
    /** An inside cone that does not narrow inward. */
    CONE_NOT_NARROWING,
    /** Fewer than 3 sides or more than 12. */
    SIDES_OUT_OF_RANGE,
    /** Corners of a polygon within its flats. */
    CORNERS_WITHIN_FLATS,
    /** Corners of a polygon beyond sharp ones. */
    CORNERS_BEYOND_SHARP,
    /** A groove that is not narrower than what lies beside it. */
    GROOVE_NOT_NARROWER,
    /** A groove beside a thread that is not as deep as the thread. */
    GROOVE_ABOVE_THREAD_ROOT,
    /** A thread of less than one turn. */
    THREAD_TOO_SHORT,
    /** A thread that can be begun from neither side. */
    THREAD_WITHOUT_ENTRY,
    /** A chamfer in a hollow corner. */
    CHAMFER_IN_HOLLOW,
    /** An edge where two sections meet without a corner. */
    EDGE_WITHOUT_CORNER,
    /** Edges longer than the section they are on. */
    EDGE_LONGER_THAN_SECTION,
    /** An edge higher than the step it is on. */
    EDGE_HIGHER_THAN_STEP,
    /** A chamfer whose angle is no angle between face and flank. */
    EDGE_ANGLE,
    /** A bore as deep as the part is long, or deeper. */
    BORE_LONGER_THAN_PART,
    /** A hole that comes out through the outside or the far end. */
    BREAKS_THROUGH,
    /** Less wall than holds. */
    WALL_TOO_THIN,
    /** An inside thread where a wider bore has left nothing to cut it in. */
    NO_MATERIAL_FOR_THREAD,
    /** A tapping hole without room for the tap. */
    TAPPING_HOLE_TOO_SHORT,
    /** A feature across that lies off the part. */
    ACROSS_OFF_PART,
    /** A feature across that is wider than where it lies. */
    ACROSS_TOO_WIDE,
    /** A blind hole across that is as deep as the part is thick. */
    ACROSS_TOO_DEEP,
    /** Features across that run into each other. */
    ACROSS_OVERLAP,
    /** A keyway that is shorter than wide. */
    KEYWAY_TOO_SHORT,
    /** A keyway that is not within one round section. */
    KEYWAY_OFF_SECTION,
    /** A letter that two issues have. */
    ISSUE_TWICE,
    /** A table of issues that does not end with the issue of the drawing. */
    ISSUE_NOT_LAST,
    /** An issue that changed a feature which is not there. */
    ISSUE_AT,
    /** A tie that names a feature which is not there, or itself. */
    TIE_NAME,
    /** A tie of features that do not turn. */
    TIE_NOT_ROUND,
    /** A run-out that is no size. */
    TIE_RUN_OUT,
    /** A hole that lies off the block. */
    HOLE_OFF_BLOCK,
    /** Holes that run into each other. */
    HOLES_OVERLAP
}
