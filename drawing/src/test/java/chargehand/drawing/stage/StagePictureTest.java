package chargehand.drawing.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.RandomParts;
import chargehand.drawing.SampleParts;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class StagePictureTest {
    private static final Solid RAM = Solid.of((Body.Turned) SampleParts.ram().body());

    static List<Hold> holds() {
        Hold.Grip grip = new Hold.Grip(Length.mm(60), Length.mm(100), Length.mm(28));
        Hold.Support centre = new Hold.Support.Centre();
        Hold.Support steady = new Hold.Support.FixedSteady(Length.mm(400), Length.mm(28));
        return List.of(
                new Hold.Chuck(grip, new Hold.Support.None()),
                new Hold.Chuck(grip, centre),
                new Hold.Chuck(grip, steady),
                new Hold.Chuck(grip, new Hold.Support.TravellingSteady()),
                new Hold.Chuck(grip, new Hold.Support.None(), Hold.Jaws.PACKED),
                new Hold.Chuck(grip, new Hold.Support.None(), Hold.Jaws.SOFT),
                new Hold.JawsInside(grip),
                new Hold.StubMandrel(grip),
                new Hold.Collet(grip, centre),
                new Hold.Centres(grip),
                new Hold.Mandrel(grip),
                new Hold.DividingHead(grip, centre),
                new Hold.Vee(grip),
                new Hold.Clamped(grip));
    }

    @ParameterizedTest
    @MethodSource("holds")
    void of_anyHold_drawsWithinThePictureWithTheHoldingTinted(Hold hold) {
        Picture picture = StagePicture.of(stage(hold, End.A), 130, 90);

        assertThat(new Box(0, 0, picture.width(), picture.height()).holds(Box.of(picture.marks())))
                .isTrue();
        assertThat(picture.width()).isLessThan(165);
        assertThat(picture.height()).isLessThan(100);
        assertThat(picture.marks()).anyMatch(mark -> mark instanceof Mark.Fill fill && fill.ink() == Ink.QUIET);
    }

    @ParameterizedTest
    @EnumSource(End.class)
    void of_eitherEndAtTheHeadstock_marksWhatIsCutAndCallsItOut(End headstock) {
        Hold hold = new Hold.Centres(new Hold.Grip(Length.mm(4), Length.mm(16), Length.mm(20)));
        Picture picture = StagePicture.of(stage(hold, headstock), 130, 90);

        assertThat(picture.marks())
                .filteredOn(mark -> mark instanceof Mark.Stroke stroke && stroke.style() == LineStyle.HEAVY)
                .hasSize(2)
                .allMatch(mark -> ((Mark.Stroke) mark).ink() == Ink.MARKING);
        assertThat(words(picture)).contains("28 f7", "480 between shoulders");
    }

    @Test
    void of_headstockAtB_isTheMirrorOfHeadstockAtA() {
        Hold hold = new Hold.Mandrel(new Hold.Grip(Length.mm(0), Length.mm(60), Length.mm(32)));
        Solid bush = Solid.of((Body.Turned) SampleParts.bush().body());
        Work work = Work.of(bush.outer(), bush.inner(), bush.outer());
        Picture atA = StagePicture.of(new Stage("bush", work, hold, End.A, List.of(), List.of()), 130, 90);
        Picture atB = StagePicture.of(new Stage("bush", work, hold, End.B, List.of(), List.of()), 130, 90);

        assertThat(atB.width()).isCloseTo(atA.width(), within(1e-6));
        assertThat(atB.height()).isCloseTo(atA.height(), within(1e-6));
        assertThat(atB.marks()).hasSameSizeAs(atA.marks());
    }

    @Test
    void of_aLongBarInTheChuck_leavesOutWhatLiesInTheSpindle() {
        Profile bar = Profile.level(Length.mm(-900), Length.mm(50), Length.mm(10));
        Profile solid = Profile.level(Length.mm(-900), Length.mm(50), Length.ZERO);
        Hold hold =
                new Hold.Chuck(new Hold.Grip(Length.mm(-25), Length.mm(-5), Length.mm(20)), new Hold.Support.None());
        Stage stage = new Stage("bar", Work.of(bar, solid, bar), hold, End.A, List.of(), List.of());

        assertThat(Held.of(stage).end()).isEqualTo(Length.mm(75));
        assertThat(StagePicture.of(stage, 130, 90).width()).isBetween(60.0, 150.0);
    }

    /** Whatever a plan says, well or badly, a picture comes of it. */
    @Test
    void of_anyWorkHeldAnywhere_drawsAPicture() {
        Random random = new Random(7);
        for (Part part : RandomParts.of(60)) {
            Solid solid = Solid.of((Body.Turned) part.body());
            double length = solid.length().mm();
            double from = -30 + random.nextDouble() * (length + 30);
            Hold.Grip grip =
                    new Hold.Grip(Length.mm(from), Length.mm(from + 5 + 30 * random.nextDouble()), Length.mm(20));
            List<Hold> holds = List.of(
                    new Hold.Chuck(grip, new Hold.Support.Centre()),
                    new Hold.Chuck(grip, new Hold.Support.FixedSteady(Length.mm(length / 2), Length.mm(20))),
                    new Hold.Vee(grip),
                    new Hold.Clamped(grip));
            Work work = new Work(
                    solid.outer(),
                    solid.inner(),
                    Profile.level(Length.mm(-5), solid.length().plus(Length.mm(2)), Length.mm(35)),
                    solid.threads(),
                    solid.flats(),
                    solid.across());
            End headstock = random.nextBoolean() ? End.A : End.B;
            Length at = Length.mm(random.nextDouble() * length);
            List<Surface> surfaces = List.of(
                    new Surface.Outside(Length.ZERO, at.plus(Length.mm(0.1)), "turn"),
                    new Surface.Inside(at, solid.length().plus(Length.mm(1)), "bore"),
                    new Surface.Face(at, "face"),
                    new Surface.Flats(Length.ZERO, solid.length(), "flats"),
                    new Surface.Feature(at, "hole"));
            for (Hold hold : holds) {
                Picture picture =
                        StagePicture.of(new Stage("by chance", work, hold, headstock, surfaces, List.of()), 130, 90);

                assertThat(new Box(0, 0, picture.width(), picture.height()).holds(Box.of(picture.marks())))
                        .isTrue();
            }
        }
    }

    @Test
    void grip_backwards_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Hold.Grip(Length.mm(5), Length.mm(5), Length.mm(20)));
    }

    private static Stage stage(Hold hold, End headstock) {
        Work work = new Work(
                RAM.outer(),
                RAM.inner(),
                Profile.level(Length.ZERO, RAM.length(), Length.mm(15)),
                RAM.threads(),
                List.of(),
                List.of());
        return new Stage(
                "ram",
                work,
                hold,
                headstock,
                List.of(new Surface.Outside(Length.mm(120), Length.mm(500), "Ø28 f7")),
                List.of(new SettingSize(Length.mm(34), Length.mm(514), "480 between shoulders")));
    }

    private static List<String> words(Picture picture) {
        return picture.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }
}
