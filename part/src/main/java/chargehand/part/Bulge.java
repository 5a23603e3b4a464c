package chargehand.part;

/** Which way a curved section swells. */
public enum Bulge {
    /** Outward, as the end of a ball. */
    CONVEX("convex"),
    /** Inward, as a long fillet. */
    CONCAVE("concave");

    private final String text;

    Bulge(String text) {
        this.text = text;
    }

    /** As a part file writes it. */
    public String text() {
        return text;
    }
}
