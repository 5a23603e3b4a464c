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
import chargehand.part.Part;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

    /** What holds a shaft, and what bears in a hub, each in its own picture. */
    static List<Held> held() {
        Hold.Grip outside = new Hold.Grip(Length.ZERO, Length.mm(30), Length.mm(35));
        Hold.Grip bore = new Hold.Grip(Length.ZERO, Length.mm(40), Length.mm(25));
        return List.of(
                new Held("soft-jaws", new Hold.Chuck(outside, new Hold.Support.None(), Hold.Jaws.SOFT), false),
                new Held("packed", new Hold.Chuck(outside, new Hold.Support.Centre(), Hold.Jaws.PACKED), false),
                new Held(
                        "steady",
                        new Hold.Chuck(outside, new Hold.Support.FixedSteady(Length.mm(140), Length.mm(29))),
                        false),
                new Held("dividing-head", new Hold.DividingHead(outside, new Hold.Support.Centre()), false),
                new Held("jaws-inside", new Hold.JawsInside(bore), true),
                new Held("stub-mandrel", new Hold.StubMandrel(bore), true));
    }

    /** A hold, and whether it bears in the hub's bore rather than on the shaft. */
    record Held(String name, Hold hold, boolean inside) {
        @Override
        public String toString() {
            return name;
        }
    }

    @ParameterizedTest
    @MethodSource("held")
    void of_aHold_isDrawnAsItWas(Held held) throws IOException {
        Part part = held.inside ? SampleParts.hub() : SampleParts.keyed();
        Solid solid = Solid.of((Body.Turned) part.body());
        Profile stock = Profile.level(Length.ZERO, solid.length(), Length.mm(held.inside ? 42 : 27));
        Work work = new Work(solid.outer(), solid.inner(), stock, solid.threads(), List.of(), solid.across());
        Length from = Length.mm(held.inside ? 14 : 80);
        Length to = Length.mm(held.inside ? 50 : 150);
        Stage stage = new Stage(
                held.name,
                work,
                held.hold,
                End.A,
                List.of(new Surface.Outside(from, to, "turn")),
                List.of(new SettingSize(from, to, held.inside ? "36" : "70")));

        compare(held.name, StagePicture.of(stage, 130, 90));
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
