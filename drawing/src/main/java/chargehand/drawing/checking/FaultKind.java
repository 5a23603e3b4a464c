package chargehand.drawing.checking;

/** What can be wrong with a sheet. */
public enum FaultKind {
    /** Two words, or words and a sign, share paper. */
    WORDS_ON_WORDS("words on words"),
    /** Words lie on a visible or hidden edge, or have cleared a piece of one away. */
    WORDS_ON_OUTLINE("words on outline"),
    /** Words lie on any other line or on an arrow. */
    WORDS_ON_LINES("words on lines"),
    /** Two dimension lines cross or run over each other. */
    DIMENSION_LINES_CROSS("dimension lines cross"),
    /** An extension line runs through a dimension line that it does not belong to. */
    DIMENSION_LINE_CROSSED("extension lines through dimension lines"),
    /** A leader crosses a leader or a dimension line. */
    LEADERS_CROSS("leaders cross"),
    /** An extension line crosses another or a leader: to be as few as can be, not none. */
    EXTENSIONS_CROSS("extension lines cross"),
    /** Something reaches over the frame. */
    OUTSIDE_FRAME("outside the frame"),
    /** An arrow touches nothing, or has no line behind it. */
    ARROW_OFF_LINE("arrows off their line"),
    /** What is drawn is not as long as the scale makes what is printed. */
    NOT_TO_SCALE("not to scale"),
    /** A printed figure is none of the part's. */
    NOT_THE_PARTS("figures not the part's"),
    /** A size that the part needs is not there. */
    SIZE_MISSING("sizes missing"),
    /** A size is given that follows from others. */
    SIZE_TWICE("sizes too many"),
    /** Words too small to read at the machine. */
    SMALL_WORDS("words too small"),
    /** A line of a width that does not belong to the group. */
    ODD_WIDTH("odd widths");

    private final String text;

    FaultKind(String text) {
        this.text = text;
    }

    /** As it is counted in a list. */
    public String text() {
        return text;
    }

    /** Whether a good sheet may have some. */
    public boolean isOnlyCounted() {
        return this == EXTENSIONS_CROSS;
    }
}
