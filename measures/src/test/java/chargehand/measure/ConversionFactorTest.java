package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Conversion factors against published ones; each row names its source and whether it was seen or remembered. */
class ConversionFactorTest {
    private static final BigDecimal HALF = new BigDecimal("0.5");

    /** Doubles carry about sixteen figures; this much of the value may be lost on the way. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvFileSource(resources = "conversion-factors.csv", numLinesToSkip = 1)
    void read_oneOfAUnit_agreesToHalfTheLastPrintedFigure(
            String quantity, String written, String expected, String status, String source) {
        var printed = new BigDecimal(expected);
        boolean exact = source.contains("exact");
        double half = exact ? 0 : printed.ulp().multiply(HALF).doubleValue();
        double allowed = half + ROUNDING * Math.max(1, printed.abs().doubleValue());
        assertThat(BaseNumber.read(quantity, written))
                .as("%s (%s)", source, status)
                .isCloseTo(printed.doubleValue(), within(allowed));
    }
}
