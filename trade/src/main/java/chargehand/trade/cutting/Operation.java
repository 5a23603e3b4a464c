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
}
