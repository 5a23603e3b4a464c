package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

final class GivenTest {
    private static final Usage USAGE = new Usage(
            "draw",
            "FILE",
            List.of("Draw."),
            List.of(Option.flag("--json", "As JSON."), Option.valued("--svg", "FILE", "Where to.")));

    @Test
    void read_wordsAndOptions_inAnyOrder() {
        Given given = given("--svg", "out.svg", "union.yaml", "--json");
        assertThat(given.words()).containsExactly("union.yaml");
        assertThat(given.find("--svg")).contains("out.svg");
        assertThat(given.has("--json")).isTrue();
        assertThat(given.has("--help")).isFalse();
    }

    @Test
    void read_valueAfterEquals_isTheSameAsAfterASpace() {
        assertThat(given("--svg=a=b.svg").find("--svg")).contains("a=b.svg");
    }

    @Test
    void read_afterTwoHyphens_takesEverythingAsWords() {
        assertThat(given("--json", "--", "--svg", "-x").words()).containsExactly("--svg", "-x");
    }

    @Test
    void read_loneHyphen_isAWord() {
        assertThat(given("-").words()).containsExactly("-");
    }

    @Test
    void read_valueOfAFlag_isRefused() {
        assertThatThrownBy(() -> given("--json=yes"))
                .isInstanceOf(AskedWrongly.class)
                .hasMessage("--json takes no value.");
    }

    @Test
    void read_unknownOption_isRefusedWithAllThatWouldDo() {
        assertThatThrownBy(() -> given("-x", "union.yaml"))
                .isInstanceOf(AskedWrongly.class)
                .hasMessage("'-x' is not something that ./chargehand draw takes. It takes --json, --svg FILE, --help.");
    }

    @Test
    void onlyWord_noneOrTwo_isRefusedWithTheForm() {
        for (Given given : List.of(given(), given("a", "b"))) {
            assertThatThrownBy(() -> given.onlyWord("FILE"))
                    .isInstanceOf(AskedWrongly.class)
                    .hasMessage("./chargehand draw needs one FILE: ./chargehand draw FILE");
        }
        assertThat(given("a").onlyWord("FILE")).isEqualTo("a");
    }

    private static Given given(String... args) {
        return Given.read(USAGE, List.of(args));
    }
}
