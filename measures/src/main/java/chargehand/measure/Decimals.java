package chargehand.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Decimals read exactly as written, so that 0.1 is one tenth. */
final class Decimals {
    private Decimals() {}

    static BigFraction exact(String decimal) {
        BigDecimal value = new BigDecimal(decimal.trim());
        if (value.precision() > 30 || Math.abs(value.scale()) > 30) {
            throw new NumberFormatException("more digits than any size needs: " + decimal);
        }
        BigInteger unscaled = value.unscaledValue();
        return value.scale() >= 0
                ? BigFraction.of(unscaled, BigInteger.TEN.pow(value.scale()))
                : BigFraction.of(unscaled.multiply(BigInteger.TEN.pow(-value.scale())), BigInteger.ONE);
    }
}
