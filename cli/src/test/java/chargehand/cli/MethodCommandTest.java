package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class MethodCommandTest {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    private Path folder;

    private static Said plan(String part, String... more) {
        var words = new ArrayList<>(List.of(
                "method",
                part,
                "--kit",
                DEMO.resolve("kit").toString(),
                "--rack",
                DEMO.resolve("rack.yaml").toString()));
        words.addAll(List.of(more));
        return Said.by(words.toArray(String[]::new));
    }

    private static String demo(String part) {
        return DEMO.resolve("parts").resolve(part + ".yaml").toString();
    }

    @Test
    void run_unionAsJson_isTheWholeMethodWithItsReplay() {
        Said said = plan(demo("union"), "--count", "2", "--json");
        Map<String, Object> tree = JsonLines.read(said.out().strip());
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat((Map<?, ?>) tree.get("replay")).extracting("made").isEqualTo(true);
        assertThat((Map<?, ?>) tree.get("method")).extracting("count").isEqualTo(2);
        assertThat((Map<?, ?>) tree.get("method"))
                .extracting("setUps")
                .asInstanceOf(InstanceOfAssertFactories.LIST)
                .hasSizeGreaterThan(1);
    }

    @Test
    void run_union_saysSetUpsAndWritesTheSheet() throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        Said said = plan(demo("union"), "--pdf", pdf.toString());
        assertThat(said.out()).contains("Set-up 1", "Set-up 2", "Replayed: every surface within");
        assertThat(Files.size(pdf)).isGreaterThan(10_000);
    }

    @Test
    void run_partThatCannotBeMadeHere_saysWhyAndWhatWouldUnlockIt() throws IOException {
        Path file = Files.writeString(folder.resolve("shaft.yaml"), """
                part: Propeller shaft
                material: EN8
                unit: mm
                general: ISO 2768-m
                outside:
                  - round: 300
                    length: 2000
                """);
        Said said = plan(file.toString());
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.out()).contains("cannot be made here", "What would unlock it");
        Map<String, Object> tree =
                JsonLines.read(plan(file.toString(), "--json").out().strip());
        assertThat((List<?>) tree.get("reasons")).isNotEmpty();
    }

    @Test
    void run_kitWithAFault_namesFileAndLine() throws IOException {
        Path kit = Files.createDirectories(folder.resolve("kit"));
        Files.writeString(kit.resolve("lathe.yaml"), "lathe: small lathe\nunit: furlong\n");
        Said said = Said.by("method", demo("union"), "--kit", kit.toString());
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).contains("lathe.yaml:2: unit");
    }

    @Test
    void run_countThatIsNone_isRefused() {
        assertThat(plan(demo("union"), "--count", "0").err()).contains("--count is a whole number from 1");
    }

    @Test
    void run_withoutAMachine_keepsOffItAndSaysSo() {
        Said said = plan(demo("metric-stud"), "--without", "small lathe", "--without", "315 four-jaw");
        assertThat(said.out())
                .contains("As asked: without small lathe.", "As asked: without 315 four-jaw of large lathe.")
                .doesNotContain("Set-up 2, small lathe")
                .contains("The quickest of all that was weighed");
    }

    @Test
    void run_severalParts_giveOneCuttingList() {
        Said said = plan(demo("union") + "=2", demo("gland-stud") + "=24", demo("bearing-bush"));
        assertThat(said.out()).contains("2 × Whistle-valve union", "24 × Gland stud", " left");
        Map<String, Object> tree = JsonLines.read(
                plan(demo("union") + "=2", demo("ram"), "--json").out().strip());
        assertThat((List<?>) tree.get("bars")).hasSize(2);
        assertThat(plan(demo("union") + "=none", demo("ram")).err()).contains("is a whole number from 1");
    }

    @Test
    void run_wishNobodyKnows_saysWhatWouldDo() {
        Said said = plan(demo("metric-stud"), "--with", "grip on tail");
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).contains("no section or bore 'tail'");
    }

    @Test
    void run_wishThatLeavesNothing_namesIt() {
        assertThat(plan(demo("union"), "--without", "mill").out()).contains("'without mill' makes it impossible here");
    }

    @Test
    void run_whyNotAndOthers_giveReasonsAndWhatToAskFor() {
        String out = plan(demo("metric-stud"), "--why-not", "--others", "2").out();
        assertThat(out).contains("why not:", "the whole takes", "Other ways:", "Ask for it so: --without '");
        Map<String, Object> tree = JsonLines.read(plan(demo("metric-stud"), "--why-not", "--others", "2", "--json")
                .out()
                .strip());
        assertThat((List<?>) tree.get("others")).hasSize(2);
        assertThat((List<?>) tree.get("notTaken")).hasSizeGreaterThan(5);
    }
}
