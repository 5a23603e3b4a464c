package chargehand.book.json;

/** JSON that is not what it should be. */
public final class UnreadableJson extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    UnreadableJson(String place, String say) {
        super((place.isEmpty() ? "" : place + ": ") + say);
    }

    UnreadableJson(String place, String say, Exception cause) {
        super((place.isEmpty() ? "" : place + ": ") + say, cause);
    }
}
