package chargehand.measure;

import java.util.Locale;

/**
 * The smallest piece of something written: a number, a word or a single sign.
 *
 * @param sort which of the three it is
 * @param text its characters: a number with its decimal marks as written, a word as written, or one sign
 * @param gap whether a space stood before it
 */
public record Token(Sort sort, String text, boolean gap) {
    /** What a token can be. */
    public enum Sort {
        /** Figures with any decimal points or commas among them, such as {@code 20,6} or {@code .8125}. */
        NUMBER,
        /** Letters, such as {@code mm}, {@code UNC} or {@code µm}. */
        WORD,
        /** Any other character. */
        SIGN
    }

    public boolean isNumber() {
        return sort == Sort.NUMBER;
    }

    public boolean isWord() {
        return sort == Sort.WORD;
    }

    /** Whether this is a number of plain figures without a decimal mark. */
    public boolean isWhole() {
        return isNumber() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    public boolean isSign(char sign) {
        return sort == Sort.SIGN && text.charAt(0) == sign;
    }

    /** Whether this is the given word, in capitals or not. */
    public boolean isWord(String word) {
        return isWord() && text.equalsIgnoreCase(word);
    }

    /** The text in small letters, for looking it up. */
    public String small() {
        return text.toLowerCase(Locale.ROOT);
    }
}
