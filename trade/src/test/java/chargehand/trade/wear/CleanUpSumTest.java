package chargehand.trade.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.LengthUnit;
import chargehand.trade.Ask;
import chargehand.trade.Tree;
import chargehand.trade.sum.Sums;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CleanUpSumTest {
    private static final double CLOSE = 1e-6;
    private static final String SPINDLE = "A:0:25.31; A:90:25.24; B:0:25.36; B:90:25.33";

    @Test
    void cleanUp_spindle_addsUpByHand() {
        Ask ask = Ask.of(
                "clean-up", "readings", SPINDLE, "newSize", "25.40", "least", "24.50", "steps", "25.25, 25, 24.75");

        assertThat(ask.mm("ovality")).isCloseTo(0.07, within(CLOSE));
        assertThat(ask.mm("taper")).isCloseTo(25.345 - 25.275, within(CLOSE));
        assertThat(ask.mm("cleansAt")).isCloseTo(25.24, within(CLOSE));
        assertThat(ask.mm("cleansAtOneSide")).isCloseTo(25.08, within(CLOSE));
        assertThat(ask.mm("turnTo")).isCloseTo(25, within(CLOSE));
        assertThat(ask.mm("left")).isCloseTo(0.5, within(CLOSE));
        assertThat(ask.text("verdict")).isEqualTo("turn");
        assertThat(ask.text("worst.station")).isEqualTo("A");
        assertThat(ask.degrees("worst.angle")).isEqualTo(90);
    }

    @Test
    void cleanUp_lessToSpare_goesFromKeepToTurnToScrap() {
        assertThat(verdict("A:0:25.39; A:90:25.38", "24.5")).isEqualTo("keep");
        assertThat(verdict("A:0:25.30; A:90:25.38", "24.5")).isEqualTo("turn");
        assertThat(verdict("A:0:25.30; A:90:25.38", "25.25")).isEqualTo("turn");
        assertThat(verdict("A:0:25.26; A:90:25.38", "25.25")).isEqualTo("scrap");
        assertThat(verdict("A:0:25.20; A:90:25.38", "25.25")).isEqualTo("scrap");
    }

    private static String verdict(String readings, String least) {
        return Ask.of("clean-up", "readings", readings, "newSize", "25.40", "least", least)
                .text("verdict");
    }

    /** A true circle whose axis has moved: diameters see nothing, radii from the old axis see it all. */
    @Test
    void radii_seeWearOnOneSide_thatDiametersDoNot() {
        Ask radii = Ask.of("clean-up", "readings", "A:0:r12.4; A:180:r12.6; A:90:r12.5; A:270:r12.5");
        Ask diameters = Ask.of("clean-up", "readings", "A:0:25; A:90:25");

        assertThat(radii.mm("ovality")).isCloseTo(0, within(CLOSE));
        assertThat(radii.mm("cleansAt")).isCloseTo(24.8, within(CLOSE));
        assertThat(diameters.mm("cleansAt")).isCloseTo(25, within(CLOSE));
        assertThat(diameters.cautions()).anyMatch(say -> say.contains("one side"));
    }

    @Test
    void cleanUp_orderOfReadings_doesNotMatter() {
        Ask one = Ask.of("clean-up", "readings", SPINDLE);
        Ask other = Ask.of("clean-up", "readings", "B:90:25.33; A:90:25.24; B:0:25.36; A:0:25.31");

        for (String key : List.of("ovality", "taper", "cleansAt", "turnTo")) {
            assertThat(other.mm(key)).isEqualTo(one.mm(key));
        }
    }

    @Test
    void cleanUp_inInches_turnsToFiveThou() {
        Ask ask = Ask.of("clean-up", "unit", "in", "readings", "A:0:.9931; A:90:.9962");

        assertThat(ask.in("turnTo")).isCloseTo(0.990, within(CLOSE));
        assertThat(ask.has("left")).isFalse();
        assertThat(ask.cautions()).anyMatch(say -> say.contains("least size"));
    }

    @Test
    void cleanUp_noStepSmallEnough_isScrap() {
        Ask ask = Ask.of("clean-up", "readings", SPINDLE, "steps", "25.3, 25.25");

        assertThat(ask.text("verdict")).isEqualTo("scrap");
        assertThat(ask.has("turnTo")).isFalse();
    }

    @Test
    void cleanUp_readingsAsObjects_areReadFromAStream() {
        var readings = List.of(
                Map.of("station", "A", "angle", 0, "diameter", 25.31),
                Map.of("station", "A", "angle", 90, "diameter", "25.24 mm"));
        Map<String, Object> tree = Sums.load()
                .answer(Map.of("sum", "clean-up", "ask", Map.of("readings", readings)), LengthUnit.MILLIMETRE);

        assertThat(Tree.number(tree, "answer", "ovality", "mm")).isCloseTo(0.07, within(CLOSE));
    }

    @Test
    void cleanUp_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("clean-up", "readings", "A:0").isRefusedAt("readings", "diameter");
        Ask.of("clean-up", "readings", "A:0:25; A:90:r12").isRefusedAt("readings", "each a radius");
        Ask.of("clean-up", "readings", "A:0:25; A:90:2.5").isRefusedAt("readings", "not of one diameter");
        Ask.of("clean-up", "readings", "A:0:25", "newSize", "100").isRefusedAt("newSize", "half");
        Ask.of("clean-up", "readings", "A:0:25", "newSize", "26", "least", "27").isRefusedAt("least", "new");
        Ask.of("clean-up", "readings", "A:0:25", "newSize", "20").isRefusedAt("newSize", "larger than this");
        Ask.of("clean-up", "readings", "A:0:25", "least", "60").isRefusedAt("least", "half");
        Ask.of("clean-up", "readings", "A:400:25").isRefusedAt("readings", "turn");
    }
}
