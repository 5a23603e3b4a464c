package chargehand.measure;

import java.util.Locale;

/**
 * The words after a number, in the one spelling by which units are looked up: {@code N·m}, {@code N m}, {@code Nm} and
 * {@code N.m} are all {@code nm}; {@code rev per min} and {@code rev/min} are one; {@code mm²}, {@code mm^2} and
 * {@code mm2} are one. Capitals do not count, for no kind has two units that differ in them alone.
 */
final class UnitPhrase {
    private UnitPhrase() {}

    /** Reads everything that is left as one phrase; empty when nothing is left. */
    static String take(Tokens tokens) {
        var phrase = new StringBuilder();
        while (!tokens.atEnd()) {
            Token token = tokens.ahead(0).orElseThrow();
            tokens.skip(1);
            phrase.append(isJoint(token) && !tokens.atEnd() ? "" : spelt(token));
        }
        return phrase.toString();
    }

    /** The phrase of a spelling in a table of units. */
    static String of(String spelling) {
        return take(Tokens.of(spelling, "a unit"));
    }

    private static boolean isJoint(Token token) {
        return token.isSign('·') || token.isSign('-') || token.isSign('^');
    }

    private static String spelt(Token token) {
        return token.isWord("per") ? "/" : token.text().toLowerCase(Locale.ROOT);
    }
}
