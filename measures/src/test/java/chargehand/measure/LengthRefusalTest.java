package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is refused as a length, and that the sentence names what was found and what would do. */
class LengthRefusalTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', commentCharacter = '^', textBlock = """
            abc            | 'abc' is not a length     | 20.6 mm
            mm             | 'mm' is not a length      | 1 3/8 in
            #7             | '#7' is not a length      | 5 thou
            M12            | 'M12' is not a length     | 20.6 mm
            NaN            | 'NaN' is not a length     | 20.6 mm
            ∞ mm           | is not a length           | 20.6 mm
            --5            | is not a length           | 20.6 mm
            1,500          | could be 1.500 or 1500    | without the comma
            1.2.3          | more than one decimal mark | one point or comma
            1,234.5        | more than one decimal mark | do not part the thousands
            1/0            | not nought below          | 13/16
            1.5/8          | a fraction that does not read | 13/16
            1 13/8         | a fraction of one or more | 1 3/8
            3 furlongs     | 'furlongs'                | mm, µm, cm, m, in, ft and thou
            1e3            | 'e3'                      | mm, µm
            20 x 30        | more than one size        | write one
            20 × 30 mm     | more than one size        | write one
            1 500          | '500' left over           | 20.6 mm
            1½½            | '1/2' left over           | 1 3/8 in
            10²            | '2' left over             | 20.6 mm
            1 -3/8         | could be one size or two  | 10 - 1/64
            1- 3/8         | could be one size or two  | 1-3/8
            20-25          | could be one size or two  | with a space on each side
            10 -           | '-' left over             | 20.6 mm
            2 ft 13 in     | less than 12 inches       | 2 ft 3 1/2 in
            1'500          | less than 12 inches       | 2 ft 3 1/2 in
            2.5 ft 3 in    | whole feet                | 2 ft 3 1/2 in
            1001 m         | longer than 1000 m        | check the figure
            -40000 in      | longer than 1000 m        | check the figure
            12345678901234567890 | more figures        | than any size needs
            1/1234567      | more figures              | than any size needs
            """)
    void read_nonsense_saysWhatWasFoundAndWhatWouldDo(String text, String found, String would) {
        assertThat(refusal(text)).contains(found).contains(would).endsWith(".");
    }

    @ParameterizedTest
    @CsvSource({"''", "' '", "'\u00A0'", "'\u200B'"})
    void read_nothing_saysALengthIsNeeded(String text) {
        assertThat(refusal(text)).isEqualTo("Nothing is written here: a length is needed.");
    }

    @Test
    void read_veryLongText_isQuotedShort() {
        assertThat(refusal("9".repeat(5_000)))
                .hasSizeLessThan(200)
                .contains("…")
                .contains("longer than a length");
    }

    private static String refusal(String text) {
        var refused = catchThrowableOfType(Unreadable.class, () -> LengthReader.read(text, LengthUnit.MILLIMETRE));
        assertThat(refused).as("'%s' is refused", text).isNotNull();
        return refused.say();
    }
}
