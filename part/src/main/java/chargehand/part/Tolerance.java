package chargehand.part;

import chargehand.measure.Length;

/** How far from its nominal a size may be, as the drawing says it. */
public sealed interface Tolerance {
    /** Nothing said at the size: the drawing's general tolerance holds. */
    record General() implements Tolerance {}

    /**
     * Two deviations at the size, such as {@code ±0.1} or {@code +0.02/-0.01}.
     *
     * @param lower the lower deviation, not above {@code upper}
     * @param upper the upper deviation
     */
    record Deviations(Length lower, Length upper) implements Tolerance {
        public Deviations {
            if (upper.isLessThan(lower)) {
                throw new IllegalArgumentException("upper deviation " + upper + " lies below lower " + lower);
            }
        }
    }

    /**
     * An ISO 286 code with the deviations it stands for at this size.
     *
     * @param code the code as written, such as {@code h7}
     * @param lower the lower deviation
     * @param upper the upper deviation
     */
    record Letters(String code, Length lower, Length upper) implements Tolerance {}

    /** A size for information only, printed in brackets and never measured against. */
    record Bracketed() implements Tolerance {}
}
