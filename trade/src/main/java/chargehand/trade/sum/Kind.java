package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;

/**
 * What sort of thing a field holds and how it is read from what a person wrote.
 *
 * @param <T> what it becomes
 */
public interface Kind<T> {
    /** The sort in a word or two, such as "length". */
    String name();

    /**
     * Reads what was written.
     *
     * @param written the text, trimmed, not empty
     * @param unit the unit of a bare number
     * @throws Unreadable with the sentence to show beside the field
     */
    T read(String written, LengthUnit unit);

    /** What was read, said back so that a person can see how it was taken; both units for a length. */
    String echo(T value);

    /** As {@link #echo(Object)}, with the unit of the asker's dials first where there are two to show. */
    default String echo(T value, LengthUnit first) {
        return echo(value);
    }
}
