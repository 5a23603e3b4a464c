package chargehand.measure;

/**
 * How one kind of quantity is written: read from what a person wrote, and shown back. {@link Notations} lists them all.
 *
 * @param <Q> the quantity
 */
public interface Notation<Q> {
    /** The kind in a word or two, without an article: {@code force}. */
    String name();

    /** What would do, for a hint or a refusal: {@code 450 N, 1.2 kN or 100 lbf}. */
    String examples();

    /**
     * Reads what was written.
     *
     * @param text what a person wrote
     * @param bareUnit the unit of length in which a bare number is taken where the kind has one
     * @throws Unreadable saying what was found and what would do; nothing else is thrown, whatever is written
     */
    Q read(String text, LengthUnit bareUnit);

    /** The quantity for people, in both systems where there are two, the given one first; rounding is stated there. */
    String text(Q quantity, LengthUnit first);
}
