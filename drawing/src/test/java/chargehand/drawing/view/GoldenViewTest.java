package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.svg.Svg;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The views as they were last looked at and found right. {@code -Dgolden.rewrite=true} writes them anew; look at them before
 * they are kept.
 */
final class GoldenViewTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "chargehand", "drawing", "view", "golden");
    private static final boolean REWRITE = Boolean.getBoolean("golden.rewrite");

    @ParameterizedTest
    @MethodSource("chargehand.drawing.view.ViewCases#names")
    void of_aCase_isDrawnAsItWas(String name) throws IOException {
        String svg = Svg.write(ViewCases.picture(name));
        Path golden = FOLDER.resolve(name + ".svg");
        if (REWRITE) {
            Files.createDirectories(FOLDER);
            Files.writeString(golden, svg);
        }
        assertThat(golden).exists();
        assertThat(svg).isEqualTo(Files.readString(golden));
    }
}
