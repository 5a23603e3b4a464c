package chargehand.measure;

/**
 * Something written that cannot be read as what it should be. The message is a plain sentence for the person who wrote
 * it: what was found and what would do.
 */
public final class Unreadable extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public Unreadable(String say) {
        super(say);
    }

    /** As {@link #Unreadable(String)}, for something that a quantity would not hold. */
    Unreadable(String say, IllegalArgumentException cause) {
        super(say, cause);
    }

    /** The sentence to show beside the field. */
    public String say() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
