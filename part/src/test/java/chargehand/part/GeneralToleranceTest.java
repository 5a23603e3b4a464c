package chargehand.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

final class GeneralToleranceTest {
    private static GeneralTolerance.Iso2768 named(String letter) {
        return switch (letter) {
            case "f" -> GeneralTolerance.Iso2768.FINE;
            case "m" -> GeneralTolerance.Iso2768.MEDIUM;
            case "c" -> GeneralTolerance.Iso2768.COARSE;
            default -> GeneralTolerance.Iso2768.VERY_COARSE;
        };
    }

    /** Each range takes its upper bound and leaves its lower one to the range before. */
    @ParameterizedTest
    @CsvFileSource(resources = "/chargehand/part/iso2768-linear.csv", numLinesToSkip = 2)
    void deviation_ofEveryRange_isAsTheStandardPrintsIt(String letter, double above, double upTo, double deviation) {
        GeneralTolerance tolerance = named(letter);

        assertThat(tolerance.text()).isEqualTo("ISO 2768-" + letter);
        assertThat(tolerance.deviation(Length.mm(upTo))).isEqualTo(Length.mm(deviation));
        assertThat(tolerance.deviation(Length.mm(above + 0.001))).isEqualTo(Length.mm(deviation));
    }

    @Test
    void plusMinus_onAnySize_isTheSame() {
        GeneralTolerance tolerance = new GeneralTolerance.PlusMinus(Length.thou(5), "±.005");

        assertThat(tolerance.deviation(Length.mm(1))).isEqualTo(Length.thou(5));
        assertThat(tolerance.deviation(Length.mm(1000))).isEqualTo(Length.thou(5));
    }

    @Test
    void plusMinus_ofNothing_isRefused() {
        assertThatThrownBy(() -> new GeneralTolerance.PlusMinus(Length.ZERO, "±0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("more than zero");
    }
}
