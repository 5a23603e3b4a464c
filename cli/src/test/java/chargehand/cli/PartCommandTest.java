package chargehand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PartCommandTest {
    private static final Path UNION = Path.of("..", "demo", "parts", "union.yaml");

    @TempDir
    private Path folder;

    @Test
    void run_soundPart_saysSoAndDraws() throws IOException {
        Path pdf = folder.resolve("new/union.pdf");
        Path svg = folder.resolve("union.svg");
        Said said = Said.by("part", UNION.toString(), "--pdf", pdf.toString(), "--svg", svg.toString());
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(said.out()).isEqualTo("Whistle-valve union, issue A, gunmetal LG2: no faults.\n");
        assertThat(Files.readAllBytes(pdf)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(Files.readString(svg)).contains("<svg", "G 1/2");
    }

    @Test
    void run_soundPart_writesItAsDxfAndTellsHowFarItReaches() throws IOException {
        Path dxf = folder.resolve("union.dxf");
        Said said = Said.by("part", UNION.toString(), "--dxf", dxf.toString(), "--json");
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat(Files.readString(dxf, StandardCharsets.US_ASCII)).contains("AC1009", "1 unit is 1 inch");
        assertThat(JsonLines.read(said.out().strip()).get("main view"))
                .asInstanceOf(InstanceOfAssertFactories.MAP)
                .containsEntry("unit", "in")
                .hasEntrySatisfying(
                        "right",
                        right -> assertThat(((Number) right).doubleValue()).isEqualTo(1.625));
    }

    @Test
    void run_faultyPart_namesEveryFaultWithItsLineAndDrawsNothing() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.yaml"), """
                part: Bad pin
                material: EN8
                unit: mm
                outside:
                  - round: 20 h77
                    length: 0
                """);
        Path pdf = folder.resolve("bad.pdf");
        Said said = Said.by("part", file.toString(), "--pdf", pdf.toString());
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains(file + ":1: 'general' is missing", file + ":5: outside[1].round");
        assertThat(pdf).doesNotExist();
    }

    @Test
    void run_faultyPartAsJson_isOneObjectWithLinesAndCodes() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.yaml"), "part: Bad pin\nwhirl: 3\n");
        Said said = Said.by("part", file.toString(), "--json");
        Map<String, Object> tree = JsonLines.read(said.out().strip());
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(tree).containsEntry("sound", false);
        assertThat((List<?>) tree.get("faults"))
                .isNotEmpty()
                .allSatisfy(fault -> assertThat((Map<?, ?>) fault)
                        .extracting("say")
                        .asString()
                        .isNotBlank());
    }

    @Test
    void run_noSuchFile_isRefused() {
        Said said = Said.by("part", folder.resolve("none.yaml").toString());
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).startsWith("There is no file ");
    }

    @Test
    void run_pictureForText_isRefused() throws IOException {
        Path file = Files.write(folder.resolve("picture.yaml"), new byte[] {(byte) 0xff, (byte) 0xd8, 0, 1});
        assertThat(Said.by("part", file.toString()).err()).contains("is not text in UTF-8");
    }

    @Test
    void run_faultsOfAFolder_countsEveryKindForEachDrawingAndInAll() {
        Said said = Said.by("part", "--faults", UNION.resolveSibling("").toString(), "--json");
        Map<String, Object> tree = JsonLines.read(said.out().strip());
        assertThat(said.ended()).isEqualTo(Ended.ANSWERED);
        assertThat((List<?>) tree.get("parts"))
                .hasSizeGreaterThanOrEqualTo(8)
                .allSatisfy(part -> assertThat((Map<?, ?>) part)
                        .extracting("counts")
                        .satisfies(counts -> assertThat((Map<?, ?>) counts).hasSizeGreaterThan(10)));
        assertThat((Map<?, ?>) tree.get("all")).extracting("words on words").isEqualTo(0);
    }

    @Test
    void run_faultsOfAFolderWithoutParts_isRefused() {
        Said said = Said.by("part", "--faults", folder.toString());
        assertThat(said.ended()).isEqualTo(Ended.ASKED_WRONGLY);
        assertThat(said.err()).contains("no files ending in .yaml");
    }
}
