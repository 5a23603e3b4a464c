package chargehand.measure;

/**
 * A quantity far beyond what a shop deals in, which is therefore not built: a length of more than a kilometre, a pressure of
 * millions of atmospheres. Figures that a person may write can lead to one; anything else that cannot be built, such as a
 * length that is no number, is a defect of the program and a plain {@link IllegalArgumentException}.
 */
public final class OutOfRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** @param message what was out of range, and the range */
    public OutOfRange(String message) {
        super(message);
    }
}
