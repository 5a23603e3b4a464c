package chargehand.trade.sum;

/**
 * One value of an entry that holds several, such as the count in {@code 610 mm x 10}.
 *
 * @param name the key in an object
 * @param kind how it is read
 * @param required whether every entry must have it
 * @param mark what stands before it in the short form, in small letters; empty for the first
 * @param <T> what it becomes
 */
public record Column<T>(String name, Kind<T> kind, boolean required, String mark) {
    /** The value that an entry starts with. */
    public static <T> Column<T> first(String name, Kind<T> kind) {
        return new Column<>(name, kind, true, "");
    }

    /** The value that an entry starts with, or not. */
    public static <T> Column<T> firstIfAny(String name, Kind<T> kind) {
        return new Column<>(name, kind, false, "");
    }

    /** A value that every entry has after {@code mark}. */
    public static <T> Column<T> then(String mark, String name, Kind<T> kind) {
        return new Column<>(name, kind, true, mark);
    }

    /** A value that an entry may have after {@code mark}. */
    public static <T> Column<T> mayBe(String mark, String name, Kind<T> kind) {
        return new Column<>(name, kind, false, mark);
    }
}
