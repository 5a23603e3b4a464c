package chargehand.book.json;

import java.util.Locale;

/** Names of the code as a person reads them. */
final class Spoken {
    private Spoken() {}

    /** The words of a type's name: {@code RoundBar} is {@code round bar}. */
    static String of(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** The words of a constant's name: {@code TAP_BY_HAND} is {@code tap by hand}; a single letter stays a capital. */
    static String of(Enum<?> constant) {
        String name = constant.name();
        return name.length() == 1 ? name : name.replace('_', ' ').toLowerCase(Locale.ROOT);
    }
}
