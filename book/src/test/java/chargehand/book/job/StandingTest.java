package chargehand.book.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

final class StandingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "asked for    | being drawn, ready, stopped, not wanted",
                "being drawn  | asked for, ready, stopped, not wanted",
                "ready        | being drawn, in hand, stopped, not wanted",
                "in hand      | being drawn, ready, to be proved, stopped, not wanted",
                "to be proved | in hand, passed, stopped, not wanted",
                "passed       | to be proved, gone out, not wanted",
                "gone out     | passed",
                "not wanted   | asked for",
            })
    void moves_fromEachStage_areThese(String from, String to) {
        assertThat(new Standing.At(stage(from)).moves()).isEqualTo(stages(to));
    }

    @ParameterizedTest
    @EnumSource(names = {"ASKED_FOR", "BEING_DRAWN", "READY", "IN_HAND", "TO_BE_PROVED"})
    void moves_fromStopped_leadBackOrNowhere(Stage before) {
        Standing stopped = new Standing.Stopped("a bar of gunmetal", before);
        assertThat(stopped.moves()).containsExactlyInAnyOrder(before, Stage.NOT_WANTED);
        assertThat(stopped.work()).isEqualTo(before);
        assertThat(stopped.waitsFor()).contains("a bar of gunmetal");
    }

    @ParameterizedTest
    @EnumSource(
            mode = Mode.EXCLUDE,
            names = {"ASKED_FOR", "BEING_DRAWN", "READY", "IN_HAND", "TO_BE_PROVED"})
    void stopped_atAStageWithoutWork_isRefused(Stage before) {
        assertThatThrownBy(() -> new Standing.Stopped("a bar", before)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void stopped_forNothing_isRefused() {
        assertThatThrownBy(() -> new Standing.Stopped(" ", Stage.READY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Standing.At(Stage.STOPPED)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void stage_byItsWord_isFound() {
        for (Stage stage : Stage.values()) {
            assertThat(Stage.parse(" " + stage.word().toUpperCase(Locale.ROOT))).contains(stage);
        }
        assertThat(Stage.parse("on the bench")).isEmpty();
    }

    private static Stage stage(String word) {
        return Stage.parse(word).orElseThrow();
    }

    private static Set<Stage> stages(String words) {
        return Arrays.stream(words.split(", ")).map(StandingTest::stage).collect(Collectors.toSet());
    }
}
