package chargehand.part;

/** The patterns of knurls. */
public enum Knurl {
    /** Ridges along the axis (RAA of DIN 82). */
    STRAIGHT("straight"),
    /** Raised diamonds, ridges crossing at 30° (RGE of DIN 82). */
    DIAMOND("diamond");

    private final String text;

    Knurl(String text) {
        this.text = text;
    }

    /** As a part file writes it. */
    public String text() {
        return text;
    }
}
