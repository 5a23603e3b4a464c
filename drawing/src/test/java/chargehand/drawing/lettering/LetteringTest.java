package chargehand.drawing.lettering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class LetteringTest {
    private static final Lettering PLAIN = Lettering.height(3.5);

    @Test
    void width_figures_areAllTheSame() {
        double zero = PLAIN.width("0");
        for (String figure : List.of("1", "2", "3", "4", "5", "6", "7", "8", "9")) {
            assertThat(PLAIN.width(figure)).isEqualTo(zero);
        }
        // The font's own hmtx table gives 600 of 1000 units to a figure.
        assertThat(zero).isCloseTo(0.6 * PLAIN.size(), within(1e-9));
    }

    @Test
    void width_boldLetters_areWider() {
        assertThat(PLAIN.bold().width("Whistle-valve union")).isGreaterThan(PLAIN.width("Whistle-valve union"));
    }

    @Test
    void points_twelve_isASixthOfAnInch() {
        assertThat(Lettering.points(12).size()).isCloseTo(25.4 / 6, within(1e-9));
    }

    @Test
    void wrap_manyWords_keepsThemAllInOrderWithinTheWidth() {
        String words = "Turn to .825 for 5/8, three passes, then stop and measure";

        List<String> lines = PLAIN.wrap(words, 40);

        assertThat(lines).hasSizeGreaterThan(1).allMatch(line -> PLAIN.width(line) <= 40);
        assertThat(String.join(" ", lines)).isEqualTo(words);
    }

    @Test
    void wrap_oneWordTooWide_isBroken() {
        List<String> lines = PLAIN.wrap("Abschmiernippelgewinde", 20);

        assertThat(lines).hasSizeGreaterThan(1).allMatch(line -> PLAIN.width(line) <= 20);
        assertThat(String.join("", lines)).isEqualTo("Abschmiernippelgewinde");
    }

    @Test
    void wrap_nothing_makesNoLine() {
        assertThat(PLAIN.wrap("  ", 40)).isEmpty();
    }

    @Test
    void wrap_aWidthBelowOneLetter_stillEnds() {
        assertThat(PLAIN.wrap("abc", 0.1)).containsExactly("a", "b", "c");
    }

    @Test
    void shown_aLetterTheFontLacks_isAQuestionMark() {
        assertThat(PLAIN.shown("Ø 12 ± \u4e00")).isEqualTo("Ø 12 ± ?");
    }
}
