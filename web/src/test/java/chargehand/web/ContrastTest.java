package chargehand.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The colours against each other in both lights. The formula of relative luminance and contrast, 4.5 to 1 for words and 3 to 1
 * for the edges of fields, are those of WCAG 2.2, success criteria 1.4.3 and 1.4.11 (from memory).
 */
final class ContrastTest {
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+): #([0-9a-f]{6})");
    private static final double WORDS = 4.5;
    private static final double EDGES = 3;

    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, sheet",
        "soft, paper",
        "soft, sheet",
        "ink, red-wash",
        "ink, brass-wash",
        "soft, brass-wash",
        "on-blue, blue",
        "on-blue-soft, blue",
        "blue, sheet",
        "red, red-wash"
    })
    void words_onTheirGround_areReadableInBothLights(String words, String ground) throws IOException {
        assertThat(contrast(light(), words, ground)).isGreaterThanOrEqualTo(WORDS);
        assertThat(contrast(dim(), words, ground)).isGreaterThanOrEqualTo(WORDS);
    }

    @ParameterizedTest
    @CsvSource({"edge, paper", "edge, sheet", "red, sheet", "brass, sheet", "blue, paper"})
    void edges_onTheirGround_areSeenInBothLights(String edge, String ground) throws IOException {
        assertThat(contrast(light(), edge, ground)).isGreaterThanOrEqualTo(EDGES);
        assertThat(contrast(dim(), edge, ground)).isGreaterThanOrEqualTo(EDGES);
    }

    private static Map<String, Integer> light() throws IOException {
        String css = css();
        return tokens(css.substring(0, css.indexOf("prefers-color-scheme: dark")));
    }

    private static Map<String, Integer> dim() throws IOException {
        String css = css();
        return tokens(css.substring(css.indexOf("prefers-color-scheme: dark")));
    }

    private static String css() throws IOException {
        try (InputStream css = Server.class.getResourceAsStream("look/look.css")) {
            return new String(Objects.requireNonNull(css).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Map<String, Integer> tokens(String css) {
        var tokens = new HashMap<String, Integer>();
        Matcher token = TOKEN.matcher(css);
        while (token.find()) {
            tokens.put(token.group(1), Integer.parseInt(token.group(2), 16));
        }
        return tokens;
    }

    private static double contrast(Map<String, Integer> tokens, String one, String other) {
        double first = luminance(Objects.requireNonNull(tokens.get(one)));
        double second = luminance(Objects.requireNonNull(tokens.get(other)));
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(int colour) {
        return 0.2126 * linear(colour >> 16) + 0.7152 * linear(colour >> 8) + 0.0722 * linear(colour);
    }

    private static double linear(int channel) {
        double share = (channel & 0xff) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
