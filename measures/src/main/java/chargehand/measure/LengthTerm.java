package chargehand.measure;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One number with the unit written after it, if any, as a part of a length: {@code 1 3/8}, {@code 5 thou},
 * {@code 2 ft 3 1/2 in}.
 *
 * @param value how many of the unit, negative when it is taken off
 * @param mark the unit, or nothing for a bare number
 */
record LengthTerm(BigFraction value, Optional<LengthMark> mark) {
    private static final BigInteger MOST = BigInteger.valueOf(Length.MOST_NANOMETRES);
    private static final BigFraction INCHES_PER_FOOT = BigFraction.of(12);

    /** Reads the term that comes next, if a number does. */
    static Optional<LengthTerm> take(Tokens tokens) {
        return Numeral.take(tokens).map(numeral -> withMark(numeral, tokens));
    }

    private static LengthTerm withMark(Numeral numeral, Tokens tokens) {
        Optional<LengthMark> mark = tokens.peek().flatMap(LengthMark::find);
        tokens.skip(mark.isPresent() ? 1 : 0);
        if (mark.filter(LengthMark.FOOT::equals).isPresent()) {
            return afterFeet(numeral, tokens);
        }
        boolean vulgarAlone = mark.isEmpty() && numeral.isVulgar();
        return new LengthTerm(numeral.value(), vulgarAlone ? Optional.of(LengthMark.INCH) : mark);
    }

    private static LengthTerm afterFeet(Numeral feet, Tokens tokens) {
        if (isJoint(tokens)) {
            tokens.skip(1);
        }
        Optional<BigFraction> inches = Numeral.take(tokens).map(numeral -> inches(feet, numeral, tokens));
        return inches.map(value -> new LengthTerm(value, Optional.of(LengthMark.INCH)))
                .orElseGet(() -> new LengthTerm(feet.value(), Optional.of(LengthMark.FOOT)));
    }

    /** The dash of {@code 2'-3 1/2"}, which joins feet to inches because it touches both. */
    private static boolean isJoint(Tokens tokens) {
        return tokens.peek().filter(token -> token.isSign('-') && !token.gap()).isPresent()
                && tokens.ahead(1)
                        .filter(token -> token.isNumber() && !token.gap())
                        .isPresent();
    }

    private static BigFraction inches(Numeral feet, Numeral inches, Tokens tokens) {
        boolean marked = tokens.peek()
                .flatMap(LengthMark::find)
                .filter(LengthMark.INCH::equals)
                .isPresent();
        tokens.skip(marked ? 1 : 0);
        if (!feet.isWhole() || inches.value().compareTo(INCHES_PER_FOOT) >= 0) {
            throw new Unreadable(
                    tokens.quoted()
                            + " does not read as feet and inches: write whole feet and less than 12 inches, as in 2 ft 3 1/2 in.");
        }
        return feet.value().multiply(INCHES_PER_FOOT).add(inches.value());
    }

    LengthTerm negated() {
        return new LengthTerm(value.negate(), mark);
    }

    /** This term with the unit of another where it has none of its own. */
    LengthTerm orIn(LengthMark other) {
        return new LengthTerm(value, Optional.of(mark.orElse(other)));
    }

    /** The nanometres of this term; a bare number takes the given unit. */
    BigInteger nanometres(LengthUnit bareUnit) {
        return mark.orElse(LengthMark.of(bareUnit)).nanometres(value);
    }

    /** The length of so many nanometres, if it lies within the bounds of lengths. */
    static Optional<Length> length(BigInteger nanometres) {
        return Optional.of(nanometres)
                .filter(size -> size.abs().compareTo(MOST) <= 0)
                .map(size -> new Length(size.longValueExact()));
    }

    /** The dial unit this term was written in. */
    LengthUnit unit(LengthUnit bareUnit) {
        return mark.map(LengthMark::unit).orElse(bareUnit);
    }
}
