package chargehand.drawing.dimension;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SizeTextTest {
    private static final SizeText MM = new SizeText(LengthUnit.MILLIMETRE);
    private static final SizeText INCH = new SizeText(LengthUnit.INCH);

    /** The unit is written only where it is not the sheet's own; inches without a nought before the point (ASME Y14.5). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1 3/8|1 3/8", "1-3/8 in|1 3/8", "1 3/8\"|1 3/8", ".8125|.8125", "20.6 mm|20.6 mm", "5 thou|5 thou"
            })
    void figures_onAnInchSheet_areAsWrittenWithoutItsUnit(String written, String printed) {
        assertThat(INCH.figures(LengthReader.read(written, LengthUnit.INCH))).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"25|25", "25 mm|25", "20,6|20.6", "1/2 in|1/2 in"})
    void figures_onAMetricSheet_areAsWrittenWithoutItsUnit(String written, String printed) {
        assertThat(MM.figures(LengthReader.read(written, LengthUnit.MILLIMETRE)))
                .isEqualTo(printed);
    }

    @Test
    void figures_ofAWorkedOutLength_areAFractionWhereItIsOne() {
        assertThat(INCH.figures(Length.inch(13, 16))).isEqualTo("13/16");
        assertThat(INCH.figures(Length.in(0.81))).isEqualTo(".810");
        assertThat(MM.figures(Length.mm(38))).isEqualTo("38");
    }

    /** h7 over 18 to 30 mm is 0 to -21 µm: ISO 286-2 (from memory). */
    @Test
    void diameter_withLetters_hasItsCodeAndItsLimits() {
        Tolerance h7 = new Tolerance.Letters("h7", Length.mm(-0.021), Length.ZERO);
        Size size = new Size(LengthReader.read("25", LengthUnit.MILLIMETRE), h7);

        assertThat(MM.diameter(size)).hasToString("Ø25 h7 25.000/24.979");
    }

    @Test
    void size_withDeviations_isStackedUnlessTheyAreAlike() {
        Length up = Length.mm(0.2);
        Length down = Length.mm(-0.1);
        var nominal = LengthReader.read("55", LengthUnit.MILLIMETRE);

        assertThat(MM.size(new Size(nominal, new Tolerance.Deviations(down, up))))
                .hasToString("55 +0.2/\u22120.1");
        assertThat(MM.size(new Size(nominal, new Tolerance.Deviations(up.negated(), up))))
                .hasToString("55 ±0.2");
        assertThat(MM.size(new Size(nominal, new Tolerance.Bracketed()))).hasToString("(55)");
    }

    @Test
    void diameter_namedByADrill_isSpeltOut() {
        assertThat(INCH.diameter(Size.general(new Written("#7", Length.in(0.201), LengthUnit.INCH))))
                .hasToString("#7 (Ø.201)");
    }
}
