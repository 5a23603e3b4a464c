package chargehand.part;

/** How the views of a drawing stand to each other (ISO 5456-2). */
public enum Projection {
    /** What is seen from the left stands at the right, what is seen from above stands below. */
    FIRST_ANGLE("first angle"),
    /** Every view stands on the side it is seen from. */
    THIRD_ANGLE("third angle");

    private final String text;

    Projection(String text) {
        this.text = text;
    }

    /** As files write it: {@code first angle}. */
    public String text() {
        return text;
    }
}
