package chargehand.book.method;

import chargehand.book.part.IssueLetter;

/**
 * What a method was worked out from.
 *
 * @param letter the issue of the drawing
 * @param version the saving of the drawing
 * @param count how many pieces
 * @param edition the edition of the kit and rack
 */
public record Basis(IssueLetter letter, int version, int count, int edition) {}
