package chargehand.trade.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CutSumTest {
    @Test
    void cut_turning_isFollowedByHand() {
        Ask ask = Ask.of(
                "cut",
                "kind",
                "turn",
                "material",
                "EN8",
                "diameter",
                "50",
                "depth",
                "5",
                "length",
                "170",
                "speeds",
                "32,50,80,125,200",
                "feeds",
                "0.1,0.2,0.3");

        assertThat(ask.metresPerMinute("speed")).isEqualTo(21);
        assertThat(ask.number("rpm")).isCloseTo(1000 * 21 / (Math.PI * 50), within(1e-9));
        assertThat(ask.number("chosen.rpm")).isEqualTo(125);
        assertThat(ask.mm("feed")).isEqualTo(0.2);
        assertThat(ask.metresPerMinute("feedRate")).isCloseTo(0.025, within(1e-12));
        assertThat(ask.number("passes")).isEqualTo(3);
        // kc = 1500 × 0.2^-0.22 = 2137.296 (t07-036, computed), on 5/3 × 0.2 mm²
        assertThat(ask.newtons("force")).isCloseTo(2137.296 * 5 / 3 * 0.2, within(0.01));
        assertThat(ask.seconds("time")).isCloseTo(3 * 172 / (0.2 * 125) * 60, within(1e-6));
        assertThat(ask.watts("motor")).isCloseTo(ask.watts("power") / 0.75, within(1e-9));
    }

    @Test
    void cut_noseGiven_tellsTheFinish() {
        // f²/(32 r): 0.1 mm on 0.4 mm is Ra 0.7813 µm (t07-126)
        Ask ask = Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "feeds", "0.1", "nose", "0.4");

        assertThat(ask.mm("roughness") * 1000).isCloseTo(0.7813, within(6e-4));
    }

    @Test
    void cut_finish_isReadInMicrometresOrMicroinches() {
        Ask micrometres = Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "finish", "Ra 1.6");
        Ask microinches = Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "finish", "63 µin");

        assertThat(microinches.mm("feed")).isCloseTo(micrometres.mm("feed"), within(1e-3));
        assertThat(micrometres.text("limit")).contains("finish");
    }

    @Test
    void cut_materialWithoutPublishedForce_givesNoneAndSaysSo() {
        Ask ask = Ask.of("cut", "kind", "turn", "material", "acetal", "diameter", "50");

        assertThat(ask.has("force")).isFalse();
        assertThat(ask.cautions()).anyMatch(say -> say.contains("No cutting force is published"));
    }

    @Test
    void cut_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("cut", "material", "EN8", "diameter", "50").isRefusedAt("kind", "needed");
        Ask.of("cut", "kind", "chew", "material", "EN8", "diameter", "50").isRefusedAt("kind", "turn");
        Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "depth", "25")
                .isRefusedAt("depth", "radius");
        Ask.of("cut", "kind", "tap", "material", "EN8", "diameter", "10").isRefusedAt("pitch", "needs the pitch");
        Ask.of("cut", "kind", "mill", "material", "EN8", "diameter", "10", "width", "11")
                .isRefusedAt("width", "wider");
        Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "finish", "mirror")
                .isRefusedAt("finish", "1.6");
        Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "speeds", "0")
                .isRefusedAt("speeds", "1 and");
        Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "power", "2 W")
                .isRefusedAt("power", "power");
        Ask.of("cut", "kind", "turn", "material", "EN8", "diameter", "50", "feeds", "316")
                .isRefusedAt("feeds", "coarser than any cut");
    }

    @Test
    void bending_twiceAsFarOut_isEightfold_andNamesTheStiffness() {
        String[] near = {"kind", "turn", "material", "EN8", "diameter", "20", "depth", "1", "feeds", "0.1"};
        Ask once = with(near, "standsOut", "60");
        Ask twice = with(near, "standsOut", "120");
        Ask centred = with(near, "standsOut", "120", "centre", "yes");

        assertThat(twice.mm("bends")).isCloseTo(8 * once.mm("bends"), within(1e-4));
        assertThat(twice.mm("larger")).isCloseTo(2 * twice.mm("bends"), within(2e-6));
        assertThat(centred.mm("bends")).isCloseTo(twice.mm("bends") * 3 * 7 / 768, within(1e-5));
        Ask slender = with(near, "standsOut", "200");
        assertThat(slender.text("limit")).contains("stiffness");
        assertThat(slender.cautions()).anyMatch(say -> say.contains("thrown"));
        assertThat(centred.text("limit")).doesNotContain("stiffness");
    }

    @Test
    void ownLaw_orBending_wronglyAsked_isRefusedBesideItsField() {
        String[] cut = {"kind", "turn", "material", "EN8", "diameter", "20"};
        with(cut, "thinning", "0.2").isRefusedAt("cuttingForce", "needed");
        with(cut, "cuttingForce", "5 MPa").isRefusedAt("cuttingForce", "between 50");
        with(cut, "cuttingForce", "1500 MPa", "thinning", "1").isRefusedAt("thinning", "between 0 and 1");
        Ask.of("cut", "kind", "drill", "material", "EN8", "diameter", "20", "standsOut", "90")
                .isRefusedAt("standsOut", "turning alone");
    }

    private static Ask with(String[] asked, String... more) {
        return Ask.of(
                "cut", Stream.concat(Arrays.stream(asked), Arrays.stream(more)).toArray(String[]::new));
    }
}
