package chargehand.book.method;

/**
 * What a method was worked out from.
 *
 * @param issue the issue of the drawing, as written on it
 * @param version the saving of the drawing
 * @param count how many pieces
 * @param edition the edition of the kit and rack
 */
public record Basis(String issue, int version, int count, int edition) {}
