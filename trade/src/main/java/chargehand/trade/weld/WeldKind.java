package chargehand.trade.weld;

/** Kinds of weld. */
public enum WeldKind {
    FILLET("fillet", "A = leg² / 2"),
    SINGLE_V("single-v", "A = t² tan(α/2) + g t"),
    DOUBLE_V("double-v", "A = t²/2 tan(α/2) + g t");

    private final String word;
    private final String areaFormula;

    WeldKind(String word, String areaFormula) {
        this.word = word;
        this.areaFormula = areaFormula;
    }

    /** The word it is asked by. */
    public String word() {
        return word;
    }

    /** The metal across it in symbols. */
    String areaFormula() {
        return areaFormula;
    }
}
