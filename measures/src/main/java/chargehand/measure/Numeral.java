package chargehand.measure;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A number as the trade writes it, kept exactly: {@code 20.6}, {@code 20,6}, {@code .8125}, {@code 13/16},
 * {@code 1 3/8}, {@code 1-3/8}, {@code 1 and 3/8}. It has no sign of its own; {@code 1 - 3/8}, with a space on each side
 * of the dash, is two numbers.
 *
 * <p>A lone comma is a decimal comma. A comma with exactly three figures after it could as well part the thousands, so
 * it is refused, save after a nought ({@code 0,125}), where no thousands can be meant.
 *
 * @param value the number, zero or more
 * @param form how it was written
 */
public record Numeral(BigFraction value, Form form) {
    private static final int MOST_FIGURES = 18;
    private static final int MOST_FRACTION_FIGURES = 6;
    private static final int GROUPED_FIGURES = 3;

    /** How a number is written. */
    public enum Form {
        /** Figures alone: {@code 10}. */
        WHOLE,
        /** With a decimal point or comma: {@code 10.0}. */
        DECIMAL,
        /** With a vulgar fraction: {@code 13/16} or {@code 1 3/8}. */
        VULGAR
    }

    public boolean isVulgar() {
        return form == Form.VULGAR;
    }

    public boolean isWhole() {
        return form == Form.WHOLE;
    }

    public boolean isZero() {
        return value.signum() == 0;
    }

    /**
     * Reads the number that comes next, if one does.
     *
     * @throws Unreadable when figures come next that are no number, such as {@code 1,500} or {@code 1.2.3}
     */
    public static Optional<Numeral> take(Tokens tokens) {
        Optional<Token> first = tokens.peek().filter(Token::isNumber);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        if (isFraction(tokens, 0)) {
            return Optional.of(fraction(tokens));
        }
        int joint = first.get().isWhole() ? jointLength(tokens) : 0;
        return Optional.of(joint > 0 ? mixed(tokens, joint) : plain(tokens));
    }

    /** Whether a numerator, a slash and a denominator other than nought stand so many places ahead. */
    private static boolean isFraction(Tokens tokens, int places) {
        return tokens.ahead(places).filter(Token::isWhole).isPresent()
                && tokens.ahead(places + 1).filter(token -> token.isSign('/')).isPresent()
                && tokens.ahead(places + 2)
                        .filter(Token::isWhole)
                        .filter(token -> !isNought(token))
                        .isPresent();
    }

    /** How many tokens lead from a whole number to the fraction that belongs to it; 0 when none does. */
    private static int jointLength(Tokens tokens) {
        if (isFraction(tokens, 1)) {
            return 1;
        }
        if (!isFraction(tokens, 2)) {
            return 0;
        }
        Token joint = tokens.ahead(1).orElseThrow();
        boolean jammed = !joint.gap() && !tokens.ahead(2).orElseThrow().gap();
        boolean whole = !isNought(tokens.ahead(0).orElseThrow());
        return joint.isWord("and") || (joint.isSign('-') && jammed && whole) ? 2 : 0;
    }

    private static Numeral mixed(Tokens tokens, int joint) {
        BigFraction whole = exact(tokens, tokens.ahead(0).orElseThrow());
        tokens.skip(joint);
        BigFraction part = fraction(tokens).value();
        if (part.compareTo(BigFraction.ONE) >= 0) {
            throw new Unreadable(tokens.quoted()
                    + " has a fraction of one or more after a whole number: the fraction beside a whole number is less"
                    + " than one, as in 1 3/8.");
        }
        return new Numeral(whole.add(part), Form.VULGAR);
    }

    private static Numeral fraction(Tokens tokens) {
        Token top = tokens.ahead(0).orElseThrow();
        Token bottom = tokens.ahead(2).orElseThrow();
        if (top.text().length() > MOST_FRACTION_FIGURES || bottom.text().length() > MOST_FRACTION_FIGURES) {
            throw tooManyFigures(tokens);
        }
        tokens.skip(3);
        return new Numeral(BigFraction.of(Integer.parseInt(top.text()), Integer.parseInt(bottom.text())), Form.VULGAR);
    }

    private static Numeral plain(Tokens tokens) {
        Token token = tokens.ahead(0).orElseThrow();
        BigFraction value = exact(tokens, token);
        tokens.skip(1);
        return new Numeral(value, token.isWhole() ? Form.WHOLE : Form.DECIMAL);
    }

    private static BigFraction exact(Tokens tokens, Token token) {
        String text = token.text();
        if (text.length() > MOST_FIGURES) {
            throw tooManyFigures(tokens);
        }
        if (text.chars().filter(c -> c == '.' || c == ',').count() > 1) {
            throw new Unreadable(tokens.quoted() + " has more than one decimal mark in '" + text
                    + "': write one point or comma and do not part the thousands.");
        }
        refuseGrouped(text, text.indexOf(','));
        return Decimals.exact(text.replace(',', '.'));
    }

    private static void refuseGrouped(String text, int comma) {
        boolean grouped = comma > 0 && text.length() - comma - 1 == GROUPED_FIGURES;
        if (grouped && !text.substring(0, comma).chars().allMatch(c -> c == '0')) {
            String whole = text.substring(0, comma);
            String rest = text.substring(comma + 1);
            throw new Unreadable("'" + text + "' could be " + whole + "." + rest + " or " + whole + rest
                    + ": write it with a decimal point, or without the comma.");
        }
    }

    private static boolean isNought(Token token) {
        return token.text().chars().allMatch(c -> c == '0');
    }

    private static Unreadable tooManyFigures(Tokens tokens) {
        return new Unreadable(tokens.quoted() + " has more figures in a number than any size needs.");
    }
}
