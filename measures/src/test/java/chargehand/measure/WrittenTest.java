package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WrittenTest {
    @ParameterizedTest
    @CsvSource({
        "25, 25 mm, MILLIMETRE",
        ".5, .5 in, INCH",
        "'20,6', '20,6 mm', MILLIMETRE",
        "1 1/4, 1 1/4, INCH",
        "1 1/4, 1 1/4, MILLIMETRE",
        "20 mm, 20 mm, INCH",
        "5 thou, 5 thou, MILLIMETRE",
    })
    void withUnit_anyWords_unitOnlyWhereItIsOpen(String words, String withUnit, LengthUnit bareUnit) {
        assertThat(LengthReader.read(words, bareUnit).withUnit()).isEqualTo(withUnit);
    }
}
