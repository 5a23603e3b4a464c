package chargehand.trade.cutting;

/** Ways of cutting metal. */
public enum Operation {
    TURN("turn"),
    FACE("face"),
    BORE("bore"),
    DRILL("drill"),
    REAM("ream"),
    TAP("tap"),
    PART("part"),
    MILL("mill"),
    THREAD("thread");

    private final String word;

    Operation(String word) {
        this.word = word;
    }

    /** The word it is asked by. */
    public String word() {
        return word;
    }

    /** Whether the depth of such a cut is metal taken off, and not how deep a hole is. */
    boolean depthIsOfCut() {
        return switch (this) {
            case TURN, FACE, BORE, MILL -> true;
            case DRILL, REAM, TAP, PART, THREAD -> false;
        };
    }
}
