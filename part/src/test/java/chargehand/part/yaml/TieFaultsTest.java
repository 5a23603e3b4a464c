package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about ties. */
final class TieFaultsTest {
    private static List<String> faults(String tie) {
        return FaultsOf.of(PartText.mm()
                .outside("round: 30, length: 40, name: journal", "hexagon: 20, length: 10, name: head")
                .inside("bore: 10, name: hole")
                .ties(tie));
    }

    @Test
    void tie_ofTwoKnownRoundFeatures_stands() {
        assertThat(faults("run-out: 0.02, of: hole, to: journal")).isEmpty();
    }

    @Test
    void tie_toAnUnknownFeature_isRefused() {
        assertThat(faults("run-out: 0.02, of: hole, to: spigot")).containsExactly("ties[1].to TIE_NAME");
    }

    @Test
    void tie_toItself_isRefused() {
        assertThat(faults("run-out: 0.02, of: hole, to: hole")).containsExactly("ties[1].to TIE_NAME");
    }

    @Test
    void tie_ofAHexagon_isRefused() {
        assertThat(faults("run-out: 0.02, of: head, to: hole")).containsExactly("ties[1].of TIE_NOT_ROUND");
    }

    @Test
    void runOut_ofNothing_isRefused() {
        assertThat(faults("run-out: 0, of: hole, to: journal")).containsExactly("ties[1].run-out TIE_RUN_OUT");
    }
}
