package chargehand.trade.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TaperSumTest {
    private static final double NANOMETRE = 2e-6;

    static List<PublishedRow> setOvers() {
        return PublishedRow.of("tapers.json", "setover_diams");
    }

    static List<PublishedRow> sineBars() {
        return PublishedRow.of("tapers.json", "sine_bar");
    }

    @ParameterizedTest
    @MethodSource("setOvers")
    void setOver_endsAndWholeLength_isAsPrinted(PublishedRow row) {
        Ask ask = Ask.of(
                "taper",
                "large",
                row.text("D"),
                "small",
                row.text("d"),
                "length",
                row.text("taper_length"),
                "workLength",
                row.text("total_length"),
                "unit",
                row.text("unit"));

        double found = row.text("unit").equals("mm") ? ask.mm("setOver") : ask.in("setOver");
        assertThat(found).isCloseTo(row.want("setover"), row.within("setover"));
    }

    @ParameterizedTest
    @MethodSource("sineBars")
    void stack_angleAndBar_takesTheIncludedAngle(PublishedRow row) {
        Ask ask = Ask.of("taper", "angle", row.text("angle_deg"), "bar", row.text("centres"));

        assertThat(ask.mm("sineBarStack")).isCloseTo(row.want("height"), row.within("height"));
        assertThat(ask.degrees("halfAngle") * 2).isCloseTo(row.number("angle_deg"), within(1e-9));
    }

    @Test
    void taper_sameOneNamedFiveWays_isTheSame() {
        List<Ask> asks = List.of(
                Ask.of("taper", "ratio", "1 in 20"),
                Ask.of("taper", "ratio", "20"),
                Ask.of("taper", "perFoot", "0.6 in"),
                Ask.of("taper", "large", "30", "small", "25", "length", "100"),
                Ask.of("taper", "standard", "Jarno 7"));

        assertThat(asks).allSatisfy(ask -> {
            assertThat(ask.number("ratio")).isCloseTo(20, within(1e-9));
            assertThat(ask.in("perFoot")).isCloseTo(0.6, within(1e-7));
            // 1.4321°: a Jarno taper's half angle (handbook standard tapers, from memory)
            assertThat(ask.degrees("halfAngle")).isCloseTo(1.4321, within(5e-6));
        });
    }

    @Test
    void taper_ratioAndTwoSizes_givesTheThird() {
        assertThat(Ask.of("taper", "ratio", "1 in 48", "large", "12", "length", "48")
                        .mm("small"))
                .isCloseTo(11, within(NANOMETRE));
        assertThat(Ask.of("taper", "ratio", "1 in 48", "small", "11", "length", "48")
                        .mm("large"))
                .isCloseTo(12, within(NANOMETRE));
        assertThat(Ask.of("taper", "ratio", "1 in 48", "large", "12", "small", "11")
                        .mm("length"))
                .isCloseTo(48, within(NANOMETRE));
        assertThat(Ask.of("taper", "ratio", "1 in 48", "large", "12").has("small"))
                .isFalse();
    }

    @Test
    void taper_machineTaperAlone_bringsItsOwnEnds() {
        Ask ask = Ask.of("taper", "standard", "MT 3");

        assertThat(ask.in("large")).isEqualTo(0.938);
        assertThat(ask.in("small")).isEqualTo(0.778);
        assertThat(ask.in("length")).isEqualTo(3.1875);
    }

    @Test
    void taper_steep_warnsAgainstSettingOver() {
        assertThat(Ask.of("taper", "angle", "20°", "workLength", "200").cautions())
                .anyMatch(say -> say.contains("too steep for setting over"));
        assertThat(Ask.of("taper", "angle", "60°", "bar", "100").cautions()).anyMatch(say -> say.contains("Above 45°"));
    }

    @Test
    void taper_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("taper").isRefusedAt("ratio", "two or three facts");
        Ask.of("taper", "large", "30", "small", "25").isRefusedAt("ratio", "two or three facts");
        Ask.of("taper", "large", "25", "small", "30", "length", "9").isRefusedAt("small", "smaller than the large");
        Ask.of("taper", "ratio", "1 in 20", "angle", "3").isRefusedAt("angle", "given twice");
        Ask.of("taper", "ratio", "1/0").isRefusedAt("ratio", "1/0");
        Ask.of("taper", "ratio", "0.5").isRefusedAt("ratio", "could mean two things");
        Ask.of("taper", "angle", "180").isRefusedAt("angle", "between 0° and 180°");
        Ask.of("taper", "standard", "MT 9").isRefusedAt("standard", "not a machine taper");
        Ask.of("taper", "ratio", "1 in 2", "large", "10", "length", "40").isRefusedAt("length", "comes to a point");
        Ask.of("taper", "ratio", "1 in 20", "large", "30", "small", "25", "length", "50")
                .isRefusedAt("large", "does not go with the rest");
        Ask.of("taper", "angle", "90", "workLength", "200").isRefusedAt("workLength", "no tailstock");
        Ask.of("taper", "ratio", "1 in 20", "large", "101 m").isRefusedAt("large", "larger than anything");
    }

    /** Two readings over rolls give the plug back: its angle from their difference, its small end from the lower. */
    @Test
    void overRolls_readBack_isThePlug() {
        Ask ask = Ask.of("taper", "small", "25", "angle", "3°", "rolls", "6", "height", "50");
        double tan = (ask.mm("overRolls.high") - ask.mm("overRolls.low")) / 2 / 50;

        assertThat(2 * Math.toDegrees(Math.atan(tan))).isCloseTo(3, within(1e-5));
        assertThat(ask.mm("overRolls.low") - 6 * (1 + tan + Math.sqrt(1 + tan * tan)))
                .isCloseTo(25, within(1e-5));
    }

    /** Balls laid in a hole of known taper: their middles are (R1 − R2) / sin of the half angle apart. */
    @Test
    void balls_inAHoleOfOneInTwenty_giveTheTaperBack() {
        double half = Math.atan(0.025);
        double tops = 2.5 / Math.sin(half) + 2.5;
        Ask ask =
                Ask.of("taper", "largeBall", "30", "smallBall", "25", "tops", String.format(Locale.ROOT, "%.6f", tops));

        assertThat(ask.number("ratio")).isCloseTo(20, within(1e-4));
    }

    @Test
    void rollsAndBalls_wronglyAsked_areRefusedBesideTheirField() {
        Ask.of("taper", "angle", "3°", "rolls", "6").isRefusedAt("small", "needed");
        Ask.of("taper", "angle", "3°", "small", "25", "height", "50").isRefusedAt("rolls", "needed");
        Ask.of("taper", "angle", "150°", "small", "25", "rolls", "6").isRefusedAt("rolls", "too steep");
        Ask.of("taper", "largeBall", "30", "smallBall", "25").isRefusedAt("tops", "needed");
        Ask.of("taper", "largeBall", "30", "tops", "62").isRefusedAt("smallBall", "needed");
        Ask.of("taper", "largeBall", "25", "smallBall", "30", "tops", "62").isRefusedAt("smallBall", "smaller");
        Ask.of("taper", "largeBall", "30", "smallBall", "25", "tops", "20").isRefusedAt("tops", "touch");
        Ask.of("taper", "ratio", "1 in 20", "largeBall", "30", "smallBall", "25", "tops", "62")
                .isRefusedAt("tops", "given twice");
    }
}
