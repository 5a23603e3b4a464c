package chargehand.drawing.picture;

/** What a colour is for. Which colour that is, the {@link Palette} says. */
public enum Ink {
    /** Lines and words. */
    INK,
    /** A tint behind things that are not the point: holdings, every other row. */
    QUIET,
    /** What is to be done now: surfaces to cut. */
    MARKING,
    /** The paper itself, to clear a place for words. */
    PAPER
}
