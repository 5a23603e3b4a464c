package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CommandsTest {
    @Test
    void run_withoutCommand_namesEveryCommand() {
        Said said = Said.by();
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.out()).contains("\n  sum ", "\n  sums ", "--version", "--help");
        assertThat(said.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"sum", "sums"})
    void run_commandWithHelp_saysWhatItTakes(String command) {
        Said said = Said.by(command, "--help");
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.out()).startsWith("./chargehand " + command).contains("--help", "--unit");
    }

    @Test
    void run_version_saysItAndNothingElse() {
        assertThat(Said.by("--version")).isEqualTo(new Said(Ended.ANSWERED, "Chargehand of the tests\n", ""));
    }

    @Test
    void run_unknownCommand_isRefusedWithWhatWouldDo() {
        Said said = Said.by("whirl");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith("'whirl' is not a command.").contains("sum, sums");
    }

    @Test
    void run_unknownOption_isRefusedWithWhatWouldDo() {
        Said said = Said.by("sums", "--whirl");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err())
                .startsWith("'--whirl' is not something that ./chargehand sums takes.")
                .contains("--list");
    }

    @Test
    void run_unreadableOptionValue_isRefusedWithWhatWouldDo() {
        Said said = Said.by("sums", "--unit", "cubit");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).contains("'cubit' is not a unit").contains("write mm or in");
    }

    @Test
    void run_optionTwice_isRefused() {
        Said said = Said.by("sums", "--unit", "mm", "--unit", "in");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).contains("--unit").contains("once only");
    }

    @Test
    void run_optionWithoutItsValue_isRefused() {
        Said said = Said.by("sums", "--unit");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("--unit needs its value: --unit UNIT.");
    }

    @Test
    void run_wordWhereNoneIsTaken_isRefused() {
        Said said = Said.by("sums", "wheels");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("'wheels' is not something that ./chargehand sums takes.");
    }
}
