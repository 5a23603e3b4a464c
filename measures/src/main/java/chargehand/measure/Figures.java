package chargehand.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Figures of a plain number for people, halves rounded away from zero, noughts at the end left out. */
public final class Figures {
    private static final MathContext FOUR = new MathContext(4, RoundingMode.HALF_UP);

    private Figures() {}

    /** The number to four significant figures, never in powers of ten: {@code 12.5}, {@code 36260}, {@code 0.1234}. */
    public static String four(double number) {
        return plain(decimal(number).round(FOUR));
    }

    /** The number to at most so many decimals. */
    public static String atMost(int decimals, double number) {
        return plain(decimal(number).setScale(decimals, RoundingMode.HALF_UP));
    }

    private static BigDecimal decimal(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("only a number can be written in figures, not " + number);
        }
        return BigDecimal.valueOf(number);
    }

    private static String plain(BigDecimal number) {
        return LengthText.trimmed(number, 0).toPlainString();
    }
}
