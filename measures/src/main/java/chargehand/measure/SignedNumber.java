package chargehand.measure;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A number with the sign before it, if any. */
final class SignedNumber {
    private SignedNumber() {}

    /** Reads the number that comes next; nothing when a sign stands alone or no number comes. */
    static Optional<BigFraction> take(Tokens tokens) {
        boolean minus = takeMinus(tokens);
        return Numeral.take(tokens).map(Numeral::value).map(value -> minus ? value.negate() : value);
    }

    /** Reads a plus or a minus if one comes next; says whether it was a minus. */
    static boolean takeMinus(Tokens tokens) {
        boolean minus = tokens.take('-');
        if (!minus) {
            tokens.take('+');
        }
        return minus;
    }
}
