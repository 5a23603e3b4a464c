package chargehand.drawing.stage;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.Golden;
import chargehand.drawing.SampleParts;
import chargehand.drawing.picture.Palette;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.svg.Svg;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stage pictures as they were last looked at and found right; {@code -Dgolden.rewrite=true} writes them anew. */
final class GoldenStageTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "chargehand", "drawing", "stage", "golden");

    @Test
    void of_aRamBetweenCentres_isDrawnAsItWas() throws IOException {
        Solid ram = Solid.of((Body.Turned) SampleParts.ram().body());
        Work work = new Work(
                ram.outer(),
                ram.inner(),
                Profile.level(Length.ZERO, ram.length(), Length.mm(15)),
                ram.threads(),
                List.of(),
                List.of());
        Stage stage = new Stage(
                "Feed-pump ram between centres",
                work,
                new Hold.Centres(new Hold.Grip(Length.mm(4), Length.mm(16), Length.mm(20))),
                End.A,
                List.of(new Surface.Outside(Length.mm(34), Length.mm(514), "Ø28 f7")),
                List.of(new SettingSize(Length.mm(34), Length.mm(514), "480")));

        compare("ram", StagePicture.of(stage, 130, 90));
    }

    @Test
    void of_aBlockDrilledInTheVice_isDrawnAsItWas() throws IOException {
        BlockStage stage = new BlockStage(
                "Clamp plate in the vice",
                Length.mm(80),
                Length.mm(40),
                Length.mm(25),
                Length.mm(27),
                Length.mm(8),
                true,
                List.of(new BlockStage.HoleBelow(Length.mm(15), Length.mm(10), Length.mm(25), "Ø10 through")),
                "25");

        compare("block", BlockPicture.of(stage, 130, 80));
    }

    private static void compare(String name, Picture picture) throws IOException {
        String svg = Svg.write(picture, Palette.SCREEN);
        Path golden = FOLDER.resolve(name + ".svg");
        if (Golden.mayRewrite()) {
            Files.createDirectories(FOLDER);
            Files.writeString(golden, svg);
        }
        assertThat(golden).exists();
        assertThat(svg).isEqualTo(Files.readString(golden));
    }
}
