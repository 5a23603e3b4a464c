package chargehand.trade.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChuckSumTest {
    private static final double CLOSE = 1e-6;

    /** With three jaws the rest is where all touch: e = 2/3 of the sum of reaches by direction. */
    @Test
    void seat_threeJaws_isTheClosedForm() {
        var random = new Random(7);
        for (int i = 0; i < 200; i++) {
            double[] reach = {20 + random.nextDouble(), 20 + random.nextDouble(), 20 + random.nextDouble()};
            double x = reach[0] - (reach[1] + reach[2]) / 2;
            double y = (reach[1] - reach[2]) * Math.sqrt(3) / 2;
            JawSeat seat = JawSeat.of(reach);
            assertThat(seat.least()).isCloseTo(2.0 / 3 * Math.hypot(x, y), within(1e-5));
            assertThat(seat.most()).isCloseTo(seat.least(), within(1e-5));
        }
    }

    /** The opening found is the smallest: no place of the work on a fine grid lets the jaws closer. */
    @Test
    void seat_sixJaws_agreesWithTryingEveryPlace() {
        var random = new Random(11);
        for (int i = 0; i < 10; i++) {
            var reach = new double[6];
            for (int j = 0; j < 6; j++) {
                reach[j] = 20 + 0.1 * random.nextDouble();
            }
            double best = Double.MAX_VALUE;
            double bestOff = 0;
            for (double x = -0.1; x <= 0.1; x += 0.0005) {
                for (double y = -0.1; y <= 0.1; y += 0.0005) {
                    double opening = opening(reach, x, y);
                    if (opening < best) {
                        best = opening;
                        bestOff = Math.hypot(x, y);
                    }
                }
            }
            JawSeat seat = JawSeat.of(reach);
            assertThat(bestOff).isBetween(seat.least() - 0.003, seat.most() + 0.003);
        }
    }

    private static double opening(double[] reach, double x, double y) {
        double opening = 0;
        for (int j = 0; j < reach.length; j++) {
            double angle = 2 * Math.PI * j / reach.length;
            opening = Math.max(opening, reach[j] + x * Math.cos(angle) + y * Math.sin(angle));
        }
        return opening;
    }

    @Test
    void outline_reach_onATipAndAcrossASpace_isAsByHand() {
        Outline wheel = Outline.toothed(20, 44, 35, 5);
        double pitch = 2 * Math.PI / 20;

        assertThat(wheel.reach(pitch / 2, 4)).isCloseTo(22, within(CLOSE));
        assertThat(wheel.reach(0, 4)).isCloseTo(22 * Math.cos(5.0 / 44), within(CLOSE));
        assertThat(wheel.reach(0, 0.5)).isLessThanOrEqualTo(17.5 + CLOSE);
    }

    @Test
    void outline_flatUnderAJaw_reachesHalfTheFlats() {
        Outline hexagon = Outline.flatted(6, 40);

        assertThat(hexagon.reach(0, 3)).isCloseTo(20 * Math.cos(Math.PI / 6), within(CLOSE));
        assertThat(hexagon.reach(Math.PI / 6, 3)).isCloseTo(20, within(CLOSE));
    }

    /** A square of side a flat against one jaw of three, the corners between the other two: by hand. */
    @Test
    void squareInThreeJaws_cannotSitTrue() {
        Ask ask = Ask.of("chuck", "sides", "4", "outside", "40", "jawWidth", "6");

        assertThat(ask.yes("evenly")).isFalse();
        assertThat(ask.mm("runoutLeast")).isGreaterThan(0.5);
        assertThat(ask.text("why")).contains("3 does not go into 4 flats");
        assertThat(ask.text("instead.0")).contains("4 jaws");
    }

    @Test
    void teethThatTheJawsGoInto_sitTrueHoweverTurned() {
        for (int jaws : new int[] {3, 4, 6}) {
            Ask ask =
                    Ask.of("chuck", "jaws", "" + jaws, "teeth", "" + jaws * 7, "outside", "60 mm", "jawWidth", "5 mm");
            assertThat(ask.yes("evenly")).isTrue();
            assertThat(ask.mm("runoutMost")).isLessThan(1e-4);
            assertThat(ask.many("instead")).isEmpty();
        }
    }

    @Test
    void narrowSpaces_letAllJawsBearOnTips() {
        Ask narrow = Ask.of("chuck", "teeth", "25", "outside", "54", "jawWidth", "8", "gap", "1.5");
        Ask wide = Ask.of("chuck", "teeth", "25", "outside", "54", "jawWidth", "8", "gap", "5");

        assertThat(narrow.yes("evenly")).isTrue();
        assertThat(narrow.mm("runoutLeast")).isLessThan(1e-4);
        assertThat(narrow.mm("runoutMost")).isGreaterThan(0.001);
        assertThat(wide.yes("evenly")).isFalse();
        assertThat(wide.mm("runoutMost")).isGreaterThan(narrow.mm("runoutMost"));
    }

    @Test
    void jawThatDropsIntoASpace_runsOutFarMore() {
        Ask bridges = Ask.of("chuck", "teeth", "8", "outside", "38", "root", "32", "gap", "9", "jawWidth", "10");
        Ask drops = Ask.of("chuck", "teeth", "8", "outside", "38", "root", "32", "gap", "9", "jawWidth", "5");

        assertThat(drops.mm("runoutMost")).isGreaterThan(2 * bridges.mm("runoutMost"));
        assertThat(drops.cautions()).anyMatch(say -> say.contains("wedges"));
    }

    @Test
    void twiceTheSize_runsOutTwiceAsMuch() {
        Ask small = Ask.of("chuck", "teeth", "25", "outside", "50", "jawWidth", "6", "gap", "4");
        Ask large = Ask.of("chuck", "teeth", "25", "outside", "100", "jawWidth", "12", "gap", "8");

        assertThat(large.mm("runoutMost")).isCloseTo(2 * small.mm("runoutMost"), within(1e-5));
        assertThat(large.mm("runoutLeast")).isCloseTo(2 * small.mm("runoutLeast"), within(1e-5));
    }

    @Test
    void instead_ofWhatIsOwned_standsApartFromTheRest() {
        Ask any = Ask.of("chuck", "teeth", "26", "outside", "56", "jawWidth", "8");
        Ask owned = Ask.of("chuck", "teeth", "26", "outside", "56", "jawWidth", "8", "owned", "four-jaw, mandrel");

        assertThat(any.has("notOwned")).isFalse();
        assertThat(owned.many("instead")).hasSizeLessThan(any.many("instead").size());
        assertThat(owned.many("instead").size() + owned.many("notOwned").size())
                .isEqualTo(any.many("instead").size());
        assertThat(owned.text("instead.0")).contains("move singly");
        assertThat(owned.text("instead.1")).contains("split bush");
        assertThat(owned.text("notOwned.0")).contains("soft jaws");
    }

    @Test
    void chuck_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("chuck", "outside", "50", "jawWidth", "6").isRefusedAt("teeth", "one of the two");
        Ask.of("chuck", "teeth", "25", "outside", "50", "jawWidth", "60").isRefusedAt("jawWidth", "wider");
        Ask.of("chuck", "teeth", "25", "outside", "50", "jawWidth", "6", "gap", "9")
                .isRefusedAt("gap", "apart");
        Ask.of("chuck", "teeth", "25", "outside", "50", "jawWidth", "6", "root", "51")
                .isRefusedAt("root", "smaller");
        Ask.of("chuck", "sides", "6", "outside", "50", "jawWidth", "6", "root", "41")
                .isRefusedAt("root", "flats");
        Ask.of("chuck", "sides", "6", "outside", "50", "jawWidth", "6", "jaws", "5")
                .isRefusedAt("jaws", "3, 4, 6");
        Ask.of("chuck", "sides", "6", "outside", "50", "jawWidth", "6", "owned", "vice")
                .isRefusedAt("owned", "four-jaw");
    }
}
