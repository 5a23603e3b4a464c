package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Deviations as drawings write them (common practice). */
class DeviationsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            ±0.1              | -100000 | 100000
            ± 0,1 mm          | -100000 | 100000
            +/- .005 in       | -127000 | 127000
            +- 0.05           | -50000  | 50000
            + / - 0.05        | -50000  | 50000
            ±5 thou           | -127000 | 127000
            ±1/64             | -396875 | 396875
            +0.02 -0.01       | -10000  | 20000
            +0.02/-0.01       | -10000  | 20000
            +0.02, -0.01      | -10000  | 20000
            +0,02 −0,01       | -10000  | 20000
            +0.02-0.01        | -10000  | 20000
            -0.01 +0.02       | -10000  | 20000
            +0/-0.05          | -50000  | 0
            0 -0.021          | -21000  | 0
            0/-0.021          | -21000  | 0
            +0.021 0          | 0       | 21000
            +0.021/0          | 0       | 21000
            -0.020/-0.041     | -41000  | -20000
            -0.041 -0.020     | -41000  | -20000
            +21/-0 µm         | 0       | 21000
            +5/0 thou         | 0       | 127000
            +.002/-.000 in    | 0       | 50800
            +1/64 -0          | 0       | 396875
            +1/64 -1/32       | -793750 | 396875
            +1/64/-0          | 0       | 396875
            """)
    void read_asDrawn_isLowerAndUpper(String text, long lower, long upper) {
        Deviations read = Deviations.read(text, LengthUnit.MILLIMETRE);
        assertThat(read.lower().nanometres()).isEqualTo(lower);
        assertThat(read.upper().nanometres()).isEqualTo(upper);
    }

    @Test
    void read_bareInches_takesTheUnitGiven() {
        assertThat(Deviations.read("+.002 -0", LengthUnit.INCH))
                .isEqualTo(new Deviations(Length.ZERO, Length.in(0.002)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            h7        | 'h7' is not a tolerance   | ±0.1
            0.1       | without its sign          | +0.02/-0.01
            0.02/0.01 | without its sign          | 0/-0.021
            +0.1      | is one deviation          | +0.1/0
            -0.05     | is one deviation          | ±0.1
            ±0        | leaves no room            | ±0.1
            +0 -0     | leaves no room            | ±0.1
            +0.1 +0.1 | leaves no room            | ±0.1
            ±         | is not a tolerance        | ±0.1
            ±-0.1     | is not a tolerance        | ±0.1
            +0.1 -    | is not a tolerance        | ±0.1
            +0.1 -0.1 -0.2 | is not a tolerance   | ±0.1
            ±1,500    | could be 1.500 or 1500    | decimal point
            ±5 furlongs | is not a tolerance      | ±0.1
            ±2000 m   | is not a tolerance        | ±0.1
            """)
    void read_nonsense_saysWhatWouldDo(String text, String found, String would) {
        var refused = catchThrowableOfType(Unreadable.class, () -> Deviations.read(text, LengthUnit.MILLIMETRE));
        assertThat(refused).as(text).isNotNull();
        assertThat(refused.say()).contains(found).contains(would);
    }

    @Test
    void text_deviations_areUpperFirst() {
        assertThat(Deviations.plusMinus(Length.mm(0.1)).text(LengthUnit.MILLIMETRE))
                .isEqualTo("±0.1 mm");
        assertThat(new Deviations(Length.mm(-0.021), Length.ZERO).text(LengthUnit.MILLIMETRE))
                .isEqualTo("0/-0.021 mm");
        assertThat(new Deviations(Length.in(-0.0016), Length.in(-0.0008)).text(LengthUnit.INCH))
                .isEqualTo("-.0008/-.0016 in");
    }

    @Test
    void text_anyWholeMicrometres_readsBackTheSame() {
        var random = new Random(31);
        for (int i = 0; i < 2_000; i++) {
            Length lower = Length.mm(random.nextInt(-500, 500) / 1000.0);
            var deviations = new Deviations(lower, lower.plus(Length.mm(random.nextInt(1, 500) / 1000.0)));
            String text = deviations.text(LengthUnit.MILLIMETRE);
            assertThat(Deviations.read(text, LengthUnit.INCH)).as(text).isEqualTo(deviations);
        }
    }

    @Test
    void text_inTheOtherUnit_neverWidens() {
        assertThat(Deviations.plusMinus(Length.thou(2)).text(LengthUnit.MILLIMETRE))
                .isEqualTo("±0.05 mm");
        var random = new Random(32);
        for (int i = 0; i < 5_000; i++) {
            var lower = new Length(random.nextLong(-500_000, 500_000));
            var deviations = new Deviations(lower, lower.plus(new Length(random.nextLong(1, 500_000))));
            for (LengthUnit unit : LengthUnit.values()) {
                Deviations shown = Deviations.read(deviations.text(unit), unit);
                assertThat(shown.upper()).isLessThanOrEqualTo(deviations.upper());
                assertThat(shown.lower()).isGreaterThanOrEqualTo(deviations.lower());
            }
        }
    }

    @Test
    void about_nominal_givesTheLimits() {
        Limits limits = Deviations.read("0/-0.021", LengthUnit.MILLIMETRE).about(Length.mm(25));
        assertThat(limits).isEqualTo(new Limits(Length.mm(24.979), Length.mm(25)));
    }
}
