package chargehand.book.part;

/**
 * The letter of a drawing's issue: A, B, C and so on, leaving out I and O, which read as figures; after Z comes AA (common
 * practice).
 *
 * @param letter one or two capitals
 */
public record IssueLetter(String letter) {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /** The first issue. */
    public static final IssueLetter FIRST = new IssueLetter("A");

    public IssueLetter {
        boolean known = letter.chars().allMatch(capital -> LETTERS.indexOf(capital) >= 0);
        if (!known || letter.isEmpty() || letter.length() > 2) {
            throw new IllegalArgumentException("an issue is one or two of " + LETTERS + ", not '" + letter + "'");
        }
    }

    /** The issue after this one. */
    public IssueLetter next() {
        int last = LETTERS.indexOf(letter.charAt(letter.length() - 1)) + 1;
        String head = letter.substring(0, letter.length() - 1);
        if (last < LETTERS.length()) {
            return new IssueLetter(head + LETTERS.charAt(last));
        }
        return new IssueLetter(
                head.isEmpty() ? "AA" : new IssueLetter(head).next().letter() + "A");
    }

    @Override
    public String toString() {
        return letter;
    }
}
