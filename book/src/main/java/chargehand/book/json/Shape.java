package chargehand.book.json;

/**
 * How values of one type stand in JSON.
 *
 * @param <T> the type
 */
interface Shape<T> {
    /** The value as a map, a list, a text, a number or a truth. */
    Object write(T value);

    /**
     * The value that was written so.
     *
     * @throws UnreadableJson naming the place, when no value of the type is written so
     */
    T read(Node node);
}
