package chargehand.trade.sum;

import org.jspecify.annotations.Nullable;

/**
 * One thing a sum asks for.
 *
 * @param name the key it is asked by
 * @param label what a person calls it
 * @param kind how it is read
 * @param required whether the sum must have it
 * @param fallback what is taken, as written, when it is not given; null where absence has a meaning of its own
 * @param hint an example of what to write, or when to leave it out
 * @param <T> what it becomes
 */
public record Field<T>(
        String name,
        String label,
        Kind<T> kind,
        boolean required,
        @Nullable String fallback,
        String hint) {

    /** A field that must be given. */
    public static <T> Field<T> required(String name, String label, Kind<T> kind, String hint) {
        return new Field<>(name, label, kind, true, null, hint);
    }

    /** A field that may be left out; the sum then does without. */
    public static <T> Field<T> optional(String name, String label, Kind<T> kind, String hint) {
        return new Field<>(name, label, kind, false, null, hint);
    }

    /** A field that may be left out and is then taken as {@code fallback}. */
    public static <T> Field<T> optional(String name, String label, Kind<T> kind, String fallback, String hint) {
        return new Field<>(name, label, kind, false, fallback, hint);
    }
}
