package chargehand.part;

/** Whether a centre hole stays in the finished part. */
public enum Stays {
    /** It is part of what is drawn. */
    MUST("must"),
    /** It may stay where one was needed. */
    MAY("may"),
    /** None may be seen on the finished part. */
    MUST_NOT("must not");

    private final String text;

    Stays(String text) {
        this.text = text;
    }

    /** As a part file writes it. */
    public String text() {
        return text;
    }
}
