package chargehand.book;

import java.util.Optional;

/**
 * What the book takes as words in one field.
 *
 * @param field the name it is asked by
 * @param what what a person calls it, at the head of a sentence, such as "The asset"
 * @param longest the most characters it may have
 */
public record Wording(String field, String what, int longest) {
    /** Who signs an entry. */
    public static final Wording WHO = new Wording("who", "The name of who does this", 60);

    /** The objection to these words, if there is one: blank, too long, or not to be written on paper. */
    public Optional<Objection> objectionTo(String words) {
        return words.isBlank() ? objection(what + " is missing.") : objectionIfGiven(words);
    }

    /** As {@link #objectionTo}, where the words may be left out. */
    public Optional<Objection> objectionIfGiven(String words) {
        if (words.length() > longest) {
            return objection(what + " has " + words.length() + " characters; up to " + longest + " will do.");
        }
        return isPrintable(words)
                ? Optional.empty()
                : objection(what + " holds characters that cannot be printed; write it with plain letters and signs.");
    }

    /** Whether the words can be kept and given back as they are: no control characters but new lines and tabs. */
    public static boolean isPrintable(String words) {
        return words.codePoints().allMatch(Wording::isPrintable);
    }

    private static boolean isPrintable(int point) {
        boolean layout = point == '\n' || point == '\r' || point == '\t';
        boolean half = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        return layout || !(Character.isISOControl(point) || half);
    }

    private Optional<Objection> objection(String say) {
        return Optional.of(new Objection(field, say));
    }
}
