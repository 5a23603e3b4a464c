package chargehand.book.method;

import chargehand.measure.Length;

/**
 * How the replay of a method ended.
 *
 * @param made whether the work came out as the part
 * @param worst the greatest difference between the two, anywhere
 */
public record ProofFigures(boolean made, Length worst) {}
