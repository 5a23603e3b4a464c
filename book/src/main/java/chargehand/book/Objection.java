package chargehand.book;

/**
 * Why something could not be entered as it was given.
 *
 * @param field the field at fault, by the name it is asked by
 * @param say what was found and what would do, a plain sentence
 */
public record Objection(String field, String say) {}
