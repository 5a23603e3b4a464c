package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Feature;
import chargehand.part.shape.Solid;
import chargehand.part.testing.PartGenerator;
import chargehand.part.testing.PartText;
import org.junit.jupiter.api.Test;

/** Parts that come back to be altered: what is there, what it was, what is made of it. */
final class AlteredPartTest {
    private static PartText pinion() {
        return PartText.inches()
                .outside("teeth: 17, diametral-pitch: 6, pressure-angle: 14.5°, length: 2, name: teeth, made: already")
                .inside("bore: 1.25, name: old bore, made: already", "bore: 1.375 H7, name: bore")
                .inBores(
                        "keyway: 5/16, depth: 1/8, in: old bore, name: old keyway, made: already",
                        "keyway: 3/8, depth: 5/32, in: bore, name: keyway");
    }

    private static Body.Turned body(PartText text) {
        return (Body.Turned) FaultsOf.sound(text).body();
    }

    @Test
    void pinion_toBeReBored_standsWithoutRemark() {
        assertThat(FaultsOf.remarks(pinion())).isEmpty();
    }

    @Test
    void asItCame_ofAPinion_hasTheOldBoreAndKeywayAlone() {
        Body.Turned old = body(pinion()).asItCame().orElseThrow();

        assertThat(old.features()).extracting(Feature::name).containsExactly("teeth", "old bore", "old keyway");
        assertThat(old.isThere(End.A)).isTrue();
    }

    @Test
    void asItCame_ofATurnedDownJournal_isARoundOfWhatItWas() {
        Body.Turned old = body(PartText.inches()
                        .outside(
                                "round: 2.980 f7, length: 4, name: journal, was: 2.991, at-a: chamfer 1/16",
                                "round: 3.5, length: 20, made: already"))
                .asItCame()
                .orElseThrow();

        assertThat(old.outside().getFirst().diameterTowardsA().in()).isEqualTo(2.991);
        assertThat(old.isThere(End.A)).isTrue();
    }

    @Test
    void asItCame_ofAPartFromStock_isNothing() {
        assertThat(body(PartText.mm().outside("round: 20, length: 30")).asItCame())
                .isEmpty();
    }

    @Test
    void everythingMadeAlready_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, length: 30, made: already")))
                .containsExactly("outside NOTHING_TO_MAKE");
    }

    @Test
    void sectionToBeMade_withoutWhatItWas_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, length: 30", "round: 30, length: 30, made: already")))
                .containsExactly("outside[1] WAS_MISSING");
    }

    @Test
    void was_smallerThanWhatIsMade_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 20, was: 19.9, length: 30", "round: 30, length: 30, made: already")))
                .containsExactly("outside[1].was WAS_SMALLER");
    }

    @Test
    void was_onAPartFromStock_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, was: 21, length: 30")))
                .containsExactly("outside[1].was WAS_NOT_WANTED");
    }

    @Test
    void was_onASectionThatIsThere_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 20, was: 21, length: 30, made: already")
                        .inside("drill: 5")))
                .containsExactly("outside[1].was WAS_NOT_WANTED");
    }

    @Test
    void made_otherThanAlready_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, length: 30, made: new")))
                .containsExactly("outside[1].made UNREADABLE");
    }

    @Test
    void asItCame_ofAJournal_keepsTheRadiusInItsHollowCorner() {
        Body.Turned old = body(PartText.mm()
                        .outside(
                                "round: 74, length: 120, name: journal, was: 74.6, at-a: chamfer 1, at-b: radius 3",
                                "round: 85, length: 200, made: already"))
                .asItCame()
                .orElseThrow();

        assertThat(old.outside().getFirst().stretch().atA()).isInstanceOf(Edge.Plain.class);
        assertThat(old.outside().getFirst().stretch().atB()).isInstanceOf(Edge.Radius.class);
    }

    /** What is altered comes out of what was there. */
    @Test
    void asItCame_ofAnyPart_holdsTheAlteredOne() {
        var generator = new PartGenerator(77, PartGenerator.Range.ALL);
        int altered = 0;
        for (int i = 0; i < 300; i++) {
            var body = (Body.Turned) generator.turned().body();
            if (body.isAltered()) {
                altered++;
                Solid old = Solid.of(body.asItCame().orElseThrow());
                Solid now = Solid.of(body);
                assertThat(old.outer().larger(now.outer()).isWithin(Length.mm(0.001), old.outer()))
                        .as(body.toString())
                        .isTrue();
                assertThat(old.inner().smaller(now.inner()).isWithin(Length.mm(0.001), old.inner()))
                        .as(body.toString())
                        .isTrue();
            }
        }
        assertThat(altered).isGreaterThan(30);
    }
}
