package chargehand.book.care;

/**
 * Something in a book that is not whole.
 *
 * @param where the job and what of it, such as "job 214, method 2", or "the file"
 * @param say what is wrong, a plain sentence
 */
public record Trouble(String where, String say) {}
