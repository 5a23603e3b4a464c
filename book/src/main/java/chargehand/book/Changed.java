package chargehand.book;

/**
 * How a change to something that others may be changing too ended.
 *
 * @param <T> what is kept
 */
public sealed interface Changed<T> permits Entered, Changed.Overtaken {
    /**
     * Someone else changed it first; nothing was kept, and what was given is still in the giver's hands.
     *
     * @param now how it stands in the book
     */
    record Overtaken<T>(T now) implements Changed<T> {}
}
