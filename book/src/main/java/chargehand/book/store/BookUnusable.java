package chargehand.book.store;

/** The book cannot be used: its file, its disk, or what is in it. The message is a plain sentence naming the file. */
public final class BookUnusable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BookUnusable(String say) {
        super(say);
    }

    public BookUnusable(String say, Throwable cause) {
        super(say, cause);
    }
}
