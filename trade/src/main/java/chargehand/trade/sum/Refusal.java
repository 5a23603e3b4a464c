package chargehand.trade.sum;

/**
 * An ask that cannot be answered as it stands: which field, and a plain sentence saying what would do. Thrown inside a
 * sum and turned into {@link Outcome.Refused} at its door; it never reaches a person as an exception.
 */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String say;

    public Refusal(String field, String say) {
        super(field + ": " + say, null, false, false);
        this.field = field;
        this.say = say;
    }

    /** A refusal about a declared field. */
    public static Refusal of(Field<?> field, String say) {
        return new Refusal(field.name(), say);
    }

    public String field() {
        return field;
    }

    public String say() {
        return say;
    }
}
