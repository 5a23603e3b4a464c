package chargehand.trade.dividing;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Fractions as whole numbers. */
final class Whole {
    private Whole() {}

    static boolean isWhole(BigFraction fraction) {
        return fraction.getDenominator().equals(BigInteger.ONE);
    }

    /** The whole number nearest to a fraction that is not negative, halves upwards. */
    static int nearest(BigFraction fraction) {
        BigFraction raised = fraction.add(BigFraction.of(1, 2));
        return raised.getNumerator().divide(raised.getDenominator()).intValueExact();
    }
}
