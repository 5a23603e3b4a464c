package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The notations of length. The inch is 25.4 mm exactly (international yard and pound agreement, 1959); everything else
 * here is arithmetic on that and the meaning of the notations (common practice).
 */
class LengthReaderTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            1 3/8            | 34925000
            1-3/8 in         | 34925000
            1-3/8"           | 34925000
            1 and 3/8        | 34925000
            1⅜               | 34925000
            1 ⅜″             | 34925000
            ⅜                |  9525000
            ³⁄₈ inch         |  9525000
            1³⁄₈             | 34925000
            ⅟8               |  3175000
            1–3⁄8 inches     | 34925000
            13/16            | 20637500
            13/8             | 41275000
            3 / 8            |  9525000
            .8125"           | 20637500
            0.8125in         | 20637500
            .8125 in.        | 20637500
            1/64             |   396875
            1/3 in           |  8466667
            1/2 mm           |   500000
            5 thou           |   127000
            2.5thou          |    63500
            .0001 in         |     2540
            25 µm            |    25000
            25 μm            |    25000
            25um             |    25000
            1 micron         |     1000
            20.6 mm          | 20600000
            20,6 mm          | 20600000
            20,6             | 20600000
            0,125            |   125000
            ,5 mm            |   500000
            20.6             | 20600000
            20.6 MM          | 20600000
            Ø20.6            | 20600000
            ⌀ 20 mm          | 20000000
            1.5 m            | 1500000000
            2,54 cm          | 25400000
            10 - 1/64        | 253603125
            10 less 1/64     | 253603125
            10 − 1/64        | 253603125
            10 - 1/64 in     | 253603125
            10 mm - 1/64     |  9603125
            20 - 0.1         | 19900000
            20 - 0.1 mm      | 19900000
            1 - 5 thou       | 25273000
            1/2 + .005       | 12827000
            1.2 - 1 m        | 200000000
            +.002 in         |    50800
            -0.02 mm         |   -20000
            − 0.02 mm        |   -20000
            -1 3/8           | -34925000
            2 ft 3 1/2 in    | 698500000
            2' 3 1/2"        | 698500000
            2'-3 1/2"        | 698500000
            2′ 3½″           | 698500000
            2 ft 3           | 685800000
            2 ft             | 609600000
            1.5 ft           | 457200000
            2' 3''           | 685800000
            0                |        0
            """)
    void read_notation_isExactToTheNanometre(String text, long nanometres) {
        assertThat(LengthReader.read(text, LengthUnit.MILLIMETRE).length().nanometres())
                .isEqualTo(nanometres);
    }

    @ParameterizedTest
    @CsvSource({
        "20, MILLIMETRE, 20000000",
        "20, INCH, 508000000",
        ".5, INCH, 12700000",
        "1/2, MILLIMETRE, 12700000",
        "1/2, INCH, 12700000",
        "20 mm, INCH, 20000000",
        "1 in, MILLIMETRE, 25400000"
    })
    void read_bareNumber_takesTheUnitGivenUnlessAVulgarFraction(String text, LengthUnit bare, long nanometres) {
        assertThat(LengthReader.read(text, bare).length().nanometres()).isEqualTo(nanometres);
    }

    @ParameterizedTest
    @CsvSource({
        "20, MILLIMETRE, MILLIMETRE",
        "20, INCH, INCH",
        "1 3/8, MILLIMETRE, INCH",
        "5 thou, MILLIMETRE, INCH",
        "25 µm, INCH, MILLIMETRE",
        "10 - 1/64, MILLIMETRE, INCH"
    })
    void read_anyNotation_keepsTheUnitItWasWrittenIn(String text, LengthUnit bare, LengthUnit unit) {
        assertThat(LengthReader.read(text, bare).unit()).isEqualTo(unit);
    }

    @Test
    void read_spacesAround_keepsTheWordsTrimmed() {
        assertThat(LengthReader.read("\u00A0 1 3/8 in \t", LengthUnit.INCH).text())
                .isEqualTo("1 3/8 in");
    }

    @Test
    void echo_writtenLength_saysBothUnits() {
        assertThat(LengthReader.read("1 3/8", LengthUnit.INCH).echo()).isEqualTo("1 3/8 = 1.375 in (34.925 mm)");
        assertThat(LengthReader.read("20,6", LengthUnit.MILLIMETRE).echo()).isEqualTo("20,6 = 20.6 mm (.811 in)");
    }
}
