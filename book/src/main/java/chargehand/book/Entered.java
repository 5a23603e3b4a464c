package chargehand.book;

import java.util.List;

/**
 * How entering something in the book ended.
 *
 * @param <T> what is kept
 */
public sealed interface Entered<T> extends Changed<T> {
    /** It is in the book, and stays there whatever happens to the machine. */
    record Done<T>(T value) implements Entered<T> {}

    /** It was not entered; every objection is listed, not only the first. */
    record Refused<T>(List<Objection> objections) implements Entered<T> {
        public Refused {
            objections = List.copyOf(objections);
            if (objections.isEmpty()) {
                throw new IllegalArgumentException("a refusal says why");
            }
        }
    }

    static <T> Entered<T> done(T value) {
        return new Done<>(value);
    }

    static <T> Entered<T> refused(List<Objection> objections) {
        return new Refused<>(objections);
    }

    static <T> Entered<T> refused(String field, String say) {
        return new Refused<>(List.of(new Objection(field, say)));
    }
}
