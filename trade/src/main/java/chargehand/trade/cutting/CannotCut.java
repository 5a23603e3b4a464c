package chargehand.trade.cutting;

/** A cut that cannot be made as it is asked for: which of its facts stands in the way, and what would do. */
public final class CannotCut extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String fact;

    CannotCut(String fact, String say) {
        super(say);
        this.fact = fact;
    }

    /** The sentence that says what is in the way and what would do. */
    public String say() {
        return String.valueOf(getMessage());
    }

    /** The fact in the way, by the name of its accessor in {@link Cut}, such as {@code width}. */
    public String fact() {
        return fact;
    }
}
