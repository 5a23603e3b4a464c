package chargehand.measure;

/**
 * A length as a person wrote it: the exact length, the words, and the unit they were read in. Drawings and sheets print
 * the words; calculations use the length.
 *
 * @param text the words as typed, trimmed, never empty
 * @param length what they mean
 * @param unit the unit they were read in, so that answers come back in the same one
 */
public record Written(String text, Length length, LengthUnit unit) {
    public Written {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a written length needs its words");
        }
    }
}
