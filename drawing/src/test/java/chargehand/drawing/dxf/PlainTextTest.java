package chargehand.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The spellings are those of the format's published description: %%c, %%d, %%p and, for others, their number. */
final class PlainTextTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    Ø12 ±0.1        | %%c12 %%p0.1
                    1 × 45°         | 1 x 45%%d
                    60 % cold drawn | 60 % cold drawn
                    100%%dust       | 100% %dust
                    Ra 1.6 µm       | Ra 1.6 \\U+00B5m
                    café – “seat”   | caf\\U+00E9 - "seat"
                    pin\u00a01      | pin 1
                    """)
    void of_words_isAsciiThatProgramsReadBack(String words, String plain) {
        assertThat(PlainText.of(words)).isEqualTo(plain);
    }
}
