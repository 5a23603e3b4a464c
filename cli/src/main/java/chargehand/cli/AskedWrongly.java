package chargehand.cli;

/** What a person asked cannot be answered as it stands. The message is the whole sentence to show. */
public final class AskedWrongly extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public AskedWrongly(String say) {
        super(say, null, false, false);
    }

    /** The same with what was found while reading. */
    public AskedWrongly(String say, Throwable cause) {
        super(say, cause, false, false);
    }

    /** The sentence to show. */
    public String say() {
        return String.valueOf(getMessage());
    }
}
