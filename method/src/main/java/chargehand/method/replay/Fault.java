package chargehand.method.replay;

/**
 * Something in a method that cannot be done as written, or that does not make the part.
 *
 * @param code the kind
 * @param setUp the number of the set-up, 0 for the method as a whole
 * @param operation the number of the operation within it, 0 for the set-up as a whole
 * @param say what is wrong, a plain sentence
 */
public record Fault(Code code, int setUp, int operation, String say) {
    /** The kinds of faults. */
    public enum Code {
        /** The blank has a form or size that the part does not come out of. */
        STOCK_TOO_SMALL,
        /** The kit has no machine of that name, or the machine is not one that makes this kind of cut. */
        NO_MACHINE,
        /** The machine has no such chuck, collet, head or vice, or it does not take the size. */
        NO_HOLDER,
        /** Where it is to be gripped there is no metal, or not of that size all along. */
        GRIP_ON_AIR,
        /** What is gripped is a thread, a taper or a groove. */
        GRIP_SPOILS,
        /** Hard jaws without packing would mark a surface that is finished. */
        GRIP_MARKS,
        /** A wall under the jaws is too thin for them: it is pressed out of round. */
        GRIP_NIPS,
        /** The jaws bear on too little to hold. */
        GRIP_TOO_SHORT,
        /** The grip is longer than the jaws. */
        GRIP_TOO_LONG,
        /** What lies behind the jaws neither fits between them nor through the spindle. */
        BLOCKED_BEHIND,
        /** The work is too large or too long for the machine. */
        TOO_BIG,
        /** What is cut stands out too far for its thickness, without support enough. */
        TOO_SLENDER,
        /** A centre is used where there is no centre hole. */
        NO_CENTRE_HOLE,
        /** A steady is used that is not owned, does not take the size, or bears where nothing is turned. */
        NO_STEADY,
        /** A tool would run into jaws, dog, centre, steady or mandrel. */
        TOOL_FOULS,
        /** The tool cannot come to the cut from that side. */
        WRONG_SIDE,
        /** Something is cut smaller, deeper or shorter than the finished part. */
        BELOW_FINISH,
        /** The operation takes nothing off. */
        NOTHING_TO_CUT,
        /** A surface or feature is made a second time. */
        MADE_TWICE,
        /** A drill has nothing to start in, or an end is drilled or centred that is still rough. */
        NO_START,
        /** A bar, reamer or tap finds no hole, or one of the wrong size or depth. */
        WRONG_HOLE,
        /** A thread is to be cut on something that is not at its major diameter, or a depth counted from what is unfinished. */
        WRONG_BLANK,
        /** Something stands in the way of the die. */
        DIE_BLOCKED,
        /** There is no such corner to chamfer or round. */
        NO_CORNER,
        /** A thread that is already cut would be spoilt. */
        SPOILS_THREAD,
        /** A wall is left too thin to stand the cut. */
        WALL_TOO_THIN,
        /** The work is loose when something is still to be cut. */
        WORK_LOOSE,
        /** Work from a bar or rack is not parted or sawn off. */
        NOT_CUT_OFF,
        /** The speed is missing or not on the machine's plate. */
        WRONG_SPEED,
        /** The feed is not on the machine's plate. */
        WRONG_FEED,
        /** A dial reading does not take off what the pass says, or is in another unit than the dial. */
        WRONG_DIAL,
        /** The passes do not lead to the size, go back, go too deep or are too heavy. */
        WRONG_PASSES,
        /** The change wheels are not owned, do not mesh, or do not cut the lead. */
        WRONG_TRAIN,
        /** The indexing is not to be had on an owned plate or does not come out to the divisions. */
        WRONG_INDEXING,
        /** The angle of the top slide is not that of the taper, or its travel is too short. */
        WRONG_ANGLE,
        /** The tool is not owned or does not make this cut. */
        NO_TOOL,
        /** Burrs are not taken off before the work leaves the holding. */
        BURRS_LEFT,
        /** Surfaces tied to each other are not finished true enough to each other. */
        NOT_TRUE,
        /** Metal is left, or missing, at the end. */
        NOT_TO_SIZE,
        /** A feature of the part is not made, or one is made that it does not have. */
        NOT_AS_DRAWN,
        /** Set-ups or operations are not numbered in order. */
        OUT_OF_ORDER
    }

    @Override
    public String toString() {
        return "set-up " + setUp + ", operation " + operation + ", " + code + ": " + say;
    }
}
