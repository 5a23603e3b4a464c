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
    /** Fewer or more teeth than a wheel has, or too few to leave anything below their roots. */
    TEETH_OUT_OF_RANGE,
    /** A pressure angle that no spur wheel has. */
    PRESSURE_ANGLE_OUT_OF_RANGE,
    /** A diameter over the tips that does not go with the teeth. */
    TEETH_OUTSIDE,
    /** A knurl of a pitch that is not rolled, or too coarse for its diameter. */
    KNURL_PITCH,
    /** An edge on a curved section. */
    EDGE_ON_CURVE,
    /** An arc that does not join the ends of its section. */
    CURVE_RADIUS,
    /** A curved section that comes to a point within the part. */
    CURVE_POINT,
    /** An edge prepared for welding in the mouth of a bore. */
    WELD_EDGE,
    /** A part to be altered of which nothing is to be made. */
    NOTHING_TO_MAKE,
    /** The size before altering, where nothing is altered. */
    WAS_NOT_WANTED,
    /** A section to be altered without the size it has now. */
    WAS_MISSING,
    /** A section that is smaller now than it is to be. */
    WAS_SMALLER,
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
    /** Wishes about the lengths of a block. */
    LENGTH_UNWANTED,
    /** A length between faces that are not there. */
    LENGTH_FACE,
    /** A length from a face to itself. */
    LENGTH_NONE,
    /** Two wishes about one length. */
    LENGTH_TWICE,
    /** A length with limits of its own that is to be bracketed or left out. */
    LENGTH_LIMITS,
    /** A taper pin of a size that is not made. */
    TAPER_PIN_SIZE,
    /** A slit through one wall where there is no bore for it to end in. */
    SLIT_WITHOUT_BORE,
    /** A slit that leaves nothing to hold the part together. */
    SLIT_PARTS,
    /** A flat that is not within one section that turns. */
    FLAT_OFF_SECTION,
    /** A flat that takes nothing off. */
    FLAT_TAKES_NOTHING,
    /** A bore that is named and not there, or that nothing can be cut in. */
    BORE_NAME,
    /** Something in a bore that lies where its wall is not. */
    OFF_BORE,
    /** Something in a bore that is as wide as the bore, or wider. */
    WIDER_THAN_BORE,
    /** A keyway in a bore that no tool runs out of. */
    KEYWAY_WITHOUT_END,
    /** A recess no wider than its bore. */
    RECESS_NOT_WIDER,
    /** Things in one bore that run into each other. */
    IN_BORE_OVERLAP,
    /** A slot as wide as the end it crosses, or wider. */
    SLOT_TOO_WIDE,
    /** A slot as deep as the part is long. */
    SLOT_TOO_DEEP,
    /** A centre hole in an end that a bore or another centre hole opens in, or that has no room for it. */
    CENTRE_PLACE,
    /** No hole on a circle, or more than are drilled. */
    HOLE_COUNT,
    /** Holes on a circle where there is no face for them. */
    CIRCLE_OFF_FACE,
    /** Holes on circles that run into each other. */
    CIRCLE_OVERLAP,
    /** A tie that names a feature which is not there, or itself. */
    TIE_NAME,
    /** A tie of features that do not turn. */
    TIE_NOT_ROUND,
    /** A run-out that is no size. */
    TIE_RUN_OUT,
    /** A hole that lies off the block. */
    HOLE_OFF_BLOCK,
    /** A slot or a step that lies off its block or leaves nothing beside it. */
    CUT_OFF_BLOCK,
    /** A counterbore no wider than its hole. */
    COUNTERBORE_NOT_WIDER,
    /** Holes that run into each other. */
    HOLES_OVERLAP
}
