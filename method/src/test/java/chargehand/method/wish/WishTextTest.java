package chargehand.method.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WishTextTest {
    private static final Names NAMES = new Names(
            Map.of("small lathe", List.of("3-jaw", "centres"), "large lathe", List.of("4-jaw", "centres")),
            List.of("C2", "B7"),
            List.of("head", "neck before shoulder"),
            List.of("head", "neck before shoulder", "end A"));

    private static WishText.Read read(String text) {
        return new WishText(NAMES).read(text);
    }

    @ParameterizedTest
    @CsvSource({
        "without small lathe, without small lathe",
        "WITHOUT  Small Lathe, without small lathe",
        "without centres of large lathe, without centres of large lathe",
        "without 4-jaw, without 4-jaw of large lathe",
        "without parting, without parting off",
        "with stock c2, with stock C2",
        "without stock B7, without stock B7",
        "with grip on Head, with grip on head",
        "without grip on head, without grip on head",
        "with end a before head, with end A before head",
        "with head before neck before shoulder, with head before neck before shoulder"
    })
    void read_asPeopleWriteIt_isSaidWithTheShopsNames(String written, String says) {
        assertThat(read(written)).isInstanceOfSatisfying(WishText.Read.Understood.class, understood -> {
            assertThat(understood.wish().says()).isEqualTo(says);
            assertThat(read(understood.wish().says())).isEqualTo(understood);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "small lathe",
                "with",
                "without",
                "without centres",
                "with stock Z9",
                "with grip on tail",
                "with head before head",
                "with head before",
                "without 4-jaw of small lathe"
            })
    void read_whatNobodyKnows_saysWhatWouldDo(String written) {
        assertThat(read(written))
                .isInstanceOfSatisfying(
                        WishText.Read.NotUnderstood.class,
                        not -> assertThat(not.say()).isNotBlank());
    }

    @Test
    void readAll_oneNotUnderstood_isRefusedWhole() {
        assertThat(new WishText(NAMES).readAll(List.of("without parting", "with luck")))
                .isInstanceOfSatisfying(
                        WishText.All.NotUnderstood.class,
                        not -> assertThat(not.says()).singleElement().asString().contains("with luck"));
    }
}
