package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class JsonLinesTest {
    @Test
    void read_decimal_staysAsWritten() {
        assertThat(JsonLines.read("{\"ask\":{\"size\":0.1}}"))
                .isEqualTo(Map.of("ask", Map.of("size", new BigDecimal("0.1"))));
    }

    @Test
    void write_thenRead_isTheSame() {
        Map<String, Object> object = Map.of("id", 7, "say", "5° 30′ — ½ in", "list", List.of("a", "b"), "yes", true);
        assertThat(JsonLines.read(JsonLines.write(object))).isEqualTo(object);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "}",
                "[]",
                "7",
                "null",
                "\"id\"",
                "{\"id\":1}}",
                "{\"id\":1} {\"id\":2}",
                "{\"id\":NaN}",
                "{id:1}",
                "{\"id\":1,\"id\":2}",
                "{\"id\":01}",
                "{\"a\":\"\u0001\"}",
                "\uFFFD",
                "{\"a\":'b'}",
                "{\"a\":9e99999999999999999999}"
            })
    void read_notOneObject_isRefusedInWords(String line) {
        assertThatThrownBy(() -> JsonLines.read(line))
                .isInstanceOf(AskedWrongly.class)
                .message()
                .doesNotContainIgnoringCase("exception")
                .containsAnyOf("not a JSON object", "follows the JSON object", "cannot be read as JSON");
    }

    @Test
    void read_veryDeepNesting_isRefused() {
        assertThatThrownBy(() -> JsonLines.read("{\"a\":".repeat(100_000))).isInstanceOf(AskedWrongly.class);
    }
}
