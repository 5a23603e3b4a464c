package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.part.GeneralTolerance;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes as a drawing writes them. */
final class SizeTextTest {
    /** Rows: text, nominal, lower, upper deviation (mm); the letters' deviations are those of ISO 286-2 (from memory). */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "25 ±0.1, 25, -0.1, 0.1",
                "25±0.1, 25, -0.1, 0.1",
                "25 +/-0.1, 25, -0.1, 0.1",
                "25 +0/-0.05, 25, -0.05, 0",
                "25 0/-0.021, 25, -0.021, 0",
                "25 -0.020/-0.041, 25, -0.041, -0.020",
                "25 +0.05/+0.02, 25, 0.02, 0.05",
                "25 +0.02 -0.01, 25, -0.01, 0.02",
                "1 in ±.005, 25.4, -0.127, 0.127",
                "1.000 in +.001/-.002, 25.4, -0.0508, 0.0254",
                "25 h7, 25, -0.021, 0",
                "25h7, 25, -0.021, 0",
                "25 mm g6, 25, -0.020, -0.007",
                "25 H8, 25, 0, 0.033",
                "25 p6, 25, 0.022, 0.035",
                "50 g6, 50, -0.025, -0.009"
            })
    void read_sizeWithTolerance_givesItsDeviations(String text, double nominal, double lower, double upper) {
        Size size = SizeText.read(text, LengthUnit.MILLIMETRE);

        assertThat(size.length()).isEqualTo(Length.mm(nominal));
        assertThat(size.limits(GeneralTolerance.Iso2768.MEDIUM).least()).isEqualTo(Length.mm(nominal + lower));
        assertThat(size.limits(GeneralTolerance.Iso2768.MEDIUM).most()).isEqualTo(Length.mm(nominal + upper));
        assertThat(size.isToleranced()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"25, 25", "1 3/8, 34.925", "1-3/8 in, 34.925", "10 - 1/64, 253.603125", ".8125 in, 20.6375"})
    void read_sizeAlone_isUnderTheGeneralTolerance(String text, double mm) {
        Size size = SizeText.read(text, LengthUnit.MILLIMETRE);

        assertThat(size.length()).isEqualTo(Length.mm(mm));
        assertThat(size.tolerance()).isEqualTo(new Tolerance.General());
    }

    @Test
    void read_sizeInBrackets_isForInformation() {
        assertThat(SizeText.read("(25)", LengthUnit.MILLIMETRE).tolerance()).isEqualTo(new Tolerance.Bracketed());
    }

    @Test
    void read_bareDeviations_takeTheUnitOfTheirSize() {
        Size size = SizeText.read("25 mm ±0.1", LengthUnit.INCH);

        assertThat(size.tolerance()).isEqualTo(new Tolerance.Deviations(Length.mm(-0.1), Length.mm(0.1)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "wide",
                "25 ±",
                "25 ±0",
                "25 +0.1",
                "25 i7",
                "25 h19",
                "0 h7",
                "25 0.1/0.2",
                "(25",
                "25 h7 ±0.1"
            })
    void read_whatIsNoSize_isRefusedInASentence(String text) {
        assertThatThrownBy(() -> SizeText.read(text, LengthUnit.MILLIMETRE))
                .isInstanceOfSatisfying(
                        Unreadable.class, refusal -> assertThat(refusal.say()).endsWith("."));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"25", "1 3/8", "(25)", "25 h7", "25 ±0.1", "25 +0.05/+0.02", "25 0/-0.021", "2.5 H11", "25 js6"})
    void write_whatWasRead_isTheSameText(String text) {
        assertThat(SizeText.write(SizeText.read(text, LengthUnit.MILLIMETRE))).isEqualTo(text);
    }

    /** Number 7 is .201 in, letter F .257 in (ASME B94.11M, from memory). */
    @ParameterizedTest
    @CsvSource({"#7, 5.1054", "letter F, 6.5278", "8.5, 8.5", "5/16, 7.9375"})
    void readDrill_byNumberLetterOrSize_isItsDiameter(String text, double mm) {
        Size size = SizeText.readDrill(text, LengthUnit.MILLIMETRE);

        assertThat(size.length()).isEqualTo(Length.mm(mm));
        assertThat(SizeText.readDrill(SizeText.write(size), LengthUnit.MILLIMETRE))
                .isEqualTo(size);
    }
}
