package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.DemoParts;
import chargehand.drawing.Golden;
import chargehand.drawing.svg.Svg;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The drawings of the demo parts as they were last looked at and found right. {@code -Dgolden.rewrite=true} writes them
 * anew; look at them before they are kept.
 */
final class GoldenDrawingTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "chargehand", "drawing", "sheet", "golden");
    private static final boolean REWRITE = Golden.mayRewrite();

    @ParameterizedTest
    @MethodSource("chargehand.drawing.DemoParts#names")
    void of_aDemoPart_isDrawnAsItWas(String name) throws IOException {
        String svg = Svg.write(PartDrawing.of(DemoParts.read(name)));
        Path golden = FOLDER.resolve(name + ".svg");
        if (REWRITE) {
            Files.createDirectories(FOLDER);
            Files.writeString(golden, svg);
        }
        assertThat(golden).exists();
        assertThat(svg).isEqualTo(Files.readString(golden));
    }

    @Test
    void names_ofDemoParts_areAllThere() {
        assertThat(DemoParts.names()).hasSizeGreaterThanOrEqualTo(8).contains("union", "shim", "sluice-spindle");
    }
}
