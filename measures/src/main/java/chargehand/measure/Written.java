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

    /** A length that nobody wrote, worded to its last figure in the given unit. */
    public static Written of(Length length, LengthUnit unit) {
        return new Written(LengthText.exact(length, unit), length, unit);
    }

    /** The length in both units, the one it was read in first: {@code 1.375 in (34.925 mm)}. */
    public String both() {
        return LengthText.both(length, unit);
    }

    /** How the words were taken, to show back beside the field: {@code 1 3/8 = 1.375 in (34.925 mm)}. */
    public String echo() {
        return text + " = " + both();
    }

    /** The words, with the unit added where they alone leave it open: a vulgar fraction is always of an inch. */
    public String withUnit() {
        boolean bare = text.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.' || c == ',');
        return bare ? text + " " + unit.symbol() : text;
    }
}
