package chargehand.trade.pin;

/** Kinds of pin through a shaft. */
public enum PinKind {
    TAPER("taper", 1),
    DOWEL("dowel", 1),
    /** Two half-round legs that do not fill the hole (common practice: seven tenths of it). */
    SPLIT("split", 0.7);

    private final String word;
    private final double fill;

    PinKind(String word, double fill) {
        this.word = word;
        this.fill = fill;
    }

    /** The word it is asked by. */
    public String word() {
        return word;
    }

    /** Share of its circle that is metal. */
    public double fill() {
        return fill;
    }
}
