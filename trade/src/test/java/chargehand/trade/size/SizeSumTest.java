package chargehand.trade.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Outcome;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeSumTest {
    private static Outcome ask(String size, LengthUnit shop) {
        return Asking.ask(new SizeSum(), Map.of("size", size), shop);
    }

    private static Answer answer(String size, LengthUnit shop) {
        return ((Outcome.Answered) ask(size, shop)).answer();
    }

    private static double mm(Answer answer, String name) {
        return ((Figure.OfLength) answer.get(name)).length().mm();
    }

    /** The fractions and decimals are those of the decimal equivalents printed inside every tool catalogue. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    13/16        | 20.6375  | 13/16 |  0       | 812.5
                    1 3/8        | 34.925   | 1 3/8 |  0       | 1375
                    1-3/8 in     | 34.925   | 1 3/8 |  0       | 1375
                    .8125"       | 20.6375  | 13/16 |  0       | 812.5
                    5 thou       | 0.127    | 0     |  0.127   | 5
                    20.6 mm      | 20.6     | 13/16 | -0.0375  | 811.0236
                    20,6 mm      | 20.6     | 13/16 | -0.0375  | 811.0236
                    #7           | 5.1054   | 13/64 | -0.0540  | 201
                    letter F     | 6.5278   | 1/4   |  0.1778  | 257
                    M12          | 12       | 15/32 |  0.0938  | 472.4409
                    1/2 BSW      | 12.7     | 1/2   |  0       | 500
                    """)
    void size_everyNotation_inBothUnits(String written, double mm, String nearest, double off, double thou) {
        Answer answer = answer(written, LengthUnit.MILLIMETRE);

        assertThat(mm(answer, "length")).isCloseTo(mm, within(1e-9));
        assertThat(answer.get("nearest64")).isEqualTo(Figure.of(nearest));
        assertThat(mm(answer, "off64")).isCloseTo(off, within(0.0001));
        assertThat(((Figure.Plain) answer.get("thou")).number()).isCloseTo(thou, within(0.0001));
    }

    @Test
    void size_bareNumber_isInTheUnitOfTheShop() {
        assertThat(mm(answer("2", LengthUnit.MILLIMETRE), "length")).isEqualTo(2);
        assertThat(mm(answer("2", LengthUnit.INCH), "length")).isEqualTo(50.8);
    }

    @Test
    void size_nonsense_isRefusedAsALength() {
        assertThat(ask("a bit", LengthUnit.INCH)).isInstanceOfSatisfying(Outcome.Refused.class, refused -> {
            assertThat(refused.field()).isEqualTo("size");
            assertThat(refused.say()).contains("is not a length");
        });
    }
}
