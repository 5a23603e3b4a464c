package chargehand.measure;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How far a size may lie from its nominal, as written behind it on a drawing.
 *
 * @param lower the lower deviation, often negative
 * @param upper the upper deviation, more than the lower one
 */
public record Deviations(Length lower, Length upper) {
    private static final String WHAT = "a tolerance";
    private static final String EXAMPLES = "±0.1, +0.02/-0.01 or 0/-0.021";

    public Deviations {
        if (!lower.isLessThan(upper)) {
            throw new IllegalArgumentException("lower deviation " + lower + " must lie below upper deviation " + upper);
        }
    }

    /** The same deviation either way. */
    public static Deviations plusMinus(Length deviation) {
        return new Deviations(deviation.negated(), deviation);
    }

    /**
     * Reads deviations as written: {@code ±0.1}, {@code +/- .005}, {@code +0.02 -0.01}, {@code +0/-0.05},
     * {@code 0 -0.021}, {@code +5/-0 thou}. They may come in either order; only nought goes without a sign; a unit behind
     * the second holds for both.
     *
     * @param bareUnit the unit where none is written
     * @throws Unreadable saying what was found and what would do
     */
    public static Deviations read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, WHAT);
        Deviations deviations = takePlusMinus(tokens) ? either(tokens, bareUnit) : two(tokens, bareUnit);
        if (!tokens.atEnd()) {
            throw no(tokens);
        }
        return deviations;
    }

    /** The limits of a nominal size with these deviations. */
    public Limits about(Length nominal) {
        return Limits.of(nominal, lower, upper);
    }

    /**
     * As on a drawing, the upper one first: {@code ±0.1 mm}, {@code +0.021/0 mm}, {@code -.0008/-.0016 in}; to a
     * micrometre or a tenth of a thou, rounded inward so that the tolerance shown is never wider.
     */
    public String text(LengthUnit unit) {
        Inward inward = Inward.of(new Limits(lower, upper), unit, LengthText.finest(unit));
        String most = LengthText.figures(inward.most(), unit);
        String least = LengthText.figures(inward.least(), unit);
        boolean alike = inward.most().add(inward.least()).signum() == 0;
        String figures = alike ? "±" + most : signed(inward.most(), most) + "/" + signed(inward.least(), least);
        return figures + " " + unit.symbol();
    }

    private static String signed(BigDecimal value, String figures) {
        return (value.signum() > 0 ? "+" : "") + figures;
    }

    private static boolean takePlusMinus(Tokens tokens) {
        if (tokens.take('±')) {
            return true;
        }
        int minus = tokens.ahead(1).filter(token -> token.isSign('/')).isPresent() ? 2 : 1;
        boolean found = tokens.peek().filter(token -> token.isSign('+')).isPresent()
                && tokens.ahead(minus).filter(token -> token.isSign('-')).isPresent();
        tokens.skip(found ? minus + 1 : 0);
        return found;
    }

    private static Deviations either(Tokens tokens, LengthUnit bareUnit) {
        Length deviation = length(term(tokens), tokens, bareUnit);
        if (deviation.isZero()) {
            throw noRoom(tokens);
        }
        return plusMinus(deviation);
    }

    private static Deviations two(Tokens tokens, LengthUnit bareUnit) {
        LengthTerm first = signedTerm(tokens);
        if (!tokens.take('/')) {
            tokens.take(',');
        }
        if (tokens.atEnd()) {
            throw new Unreadable(
                    tokens.quoted() + " is one deviation: write the other too, as in +0.1/0, or ±0.1 for either way.");
        }
        LengthTerm second = signedTerm(tokens);
        Length one = length(second.mark().map(first::orIn).orElse(first), tokens, bareUnit);
        Length other = length(second, tokens, bareUnit);
        if (one.equals(other)) {
            throw noRoom(tokens);
        }
        return new Deviations(Length.least(one, other), Length.most(one, other));
    }

    private static LengthTerm signedTerm(Tokens tokens) {
        Optional<Token> sign = tokens.peek().filter(token -> token.isSign('+') || token.isSign('-'));
        tokens.skip(sign.isPresent() ? 1 : 0);
        LengthTerm term = term(tokens);
        if (sign.isEmpty() && term.value().signum() != 0) {
            throw new Unreadable(tokens.quoted() + " has a deviation without its sign: write " + EXAMPLES + ".");
        }
        return sign.filter(token -> token.isSign('-'))
                .map(minus -> term.negated())
                .orElse(term);
    }

    private static LengthTerm term(Tokens tokens) {
        return LengthTerm.take(tokens).orElseThrow(() -> no(tokens));
    }

    private static Length length(LengthTerm term, Tokens tokens, LengthUnit bareUnit) {
        return LengthTerm.length(term.nanometres(bareUnit)).orElseThrow(() -> no(tokens));
    }

    private static Unreadable no(Tokens tokens) {
        return new Unreadable(tokens.quoted() + " is not " + WHAT + ": write " + EXAMPLES + ".");
    }

    private static Unreadable noRoom(Tokens tokens) {
        return new Unreadable(tokens.quoted() + " leaves no room between the limits: write " + EXAMPLES + ".");
    }
}
