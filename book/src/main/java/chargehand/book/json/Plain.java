package chargehand.book.json;

import java.util.function.Function;

/**
 * The shape of a type that is written as one plain value.
 *
 * @param writing to text, number or truth
 * @param reading back; refusals of the type itself are told with the place
 */
record Plain<T>(Function<T, Object> writing, Function<Node, T> reading) implements Shape<T> {
    @Override
    public Object write(T value) {
        return writing.apply(value);
    }

    @Override
    public T read(Node node) {
        try {
            return reading.apply(node);
        } catch (UnreadableJson unreadable) {
            throw unreadable;
        } catch (IllegalArgumentException | ArithmeticException refused) {
            throw new UnreadableJson(node.place(), String.valueOf(refused.getMessage()), refused);
        }
    }
}
