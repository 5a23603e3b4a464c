package chargehand.trade.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.LengthUnit;
import chargehand.trade.Ask;
import chargehand.trade.material.MaterialKind;
import org.junit.jupiter.api.Test;

class SplitBushSumTest {
    private static SplitBush bush(double work, double clearance, double wall) {
        return new SplitBush(
                work, clearance, wall, 40, MaterialKind.MATERIAL.read("mild steel", LengthUnit.MILLIMETRE));
    }

    /** A second way to the closing pressure: the bending of the ring added up piece by piece, by Castigliano's theorem. */
    @Test
    void closingPressure_agreesWithTheRingAddedUpInPieces() {
        SplitBush bush = bush(50, 0.2, 4);
        double radius = bush.meanRadius();
        double stiffness = bush.elastic() * Math.pow(bush.wall(), 3) / 12;
        int pieces = 20_000;
        double closure = 0;
        for (int i = 0; i < pieces; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / pieces;
            double moment = bush.closingPressure() * radius * radius * (1 - Math.cos(angle));
            double arm = radius * (1 - Math.cos(angle));
            closure += moment * arm / stiffness * radius * 2 * Math.PI / pieces;
        }
        // The circumference falls by π times what the diameter falls by.
        assertThat(closure).isCloseTo(Math.PI * 0.2, within(1e-6));
    }

    @Test
    void closing_doubleTheClearance_doublesStressAndPush() {
        SplitBush one = bush(40, 0.1, 4);
        SplitBush two = bush(40, 0.2, 4);

        // The mean radius grows a little with the clearance.
        assertThat(two.closingStress() / one.closingStress()).isCloseTo(2, within(0.02));
        assertThat(two.closingForce() / one.closingForce()).isCloseTo(2, within(0.03));
    }

    @Test
    void slit_alwaysClosesFurtherThanTheClearance() {
        for (double clearance = 0.02; clearance < 2; clearance += 0.03) {
            assertThat(bush(60, clearance, 4).closes()).isGreaterThan(1.9 * clearance);
        }
    }

    @Test
    void splitBush_addsUpByHand() {
        Ask ask = Ask.of(
                "split-bush",
                "work",
                "40",
                "hole",
                "50",
                "length",
                "30",
                "material",
                "mild steel",
                "clearance",
                "0.1",
                "grip",
                "12 kN",
                "friction",
                "0.15");

        assertThat(ask.mm("bore")).isCloseTo(40.1, within(1e-6));
        assertThat(ask.mm("wall")).isCloseTo(4.95, within(1e-6));
        assertThat(ask.mm("slit")).isCloseTo(1.5, within(1e-6));
        double left = 12_000 - ask.newtons("closingForce");
        assertThat(ask.newtonMetres("torqueHeld")).isCloseTo(0.15 * left * 0.02, within(1e-6));
        assertThat(ask.megapascals("pressure")).isCloseTo(left / (Math.PI * 40 * 30), within(1e-6));
        assertThat(ask.yes("sound")).isTrue();
    }

    @Test
    void splitBush_moreTorqueThanHalfOfWhatItHolds_isNotSound() {
        Ask held = Ask.of("split-bush", "work", "40", "length", "30", "material", "brass", "torque", "2 Nm");
        Ask slips = Ask.of("split-bush", "work", "40", "length", "30", "material", "brass", "torque", "200 Nm");

        assertThat(held.yes("sound")).isTrue();
        assertThat(slips.yes("sound")).isFalse();
        assertThat(slips.text("why")).contains("slip");
        assertThat(slips.cautions()).anyMatch(say -> say.contains("slip"));
    }

    @Test
    void splitBush_tooStiff_isNotSound() {
        Ask ask =
                Ask.of("split-bush", "work", "20", "hole", "58", "length", "60", "material", "EN8", "clearance", "0.8");

        assertThat(ask.yes("sound")).isFalse();
        assertThat(ask.newtonMetres("torqueHeld")).isZero();
    }

    @Test
    void splitBush_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("split-bush", "work", "40", "length", "30").isRefusedAt("material", "needed");
        Ask.of("split-bush", "work", "40", "hole", "41", "length", "30", "material", "EN8")
                .isRefusedAt("hole", "less than 1 mm");
        Ask.of("split-bush", "work", "40", "hole", "140", "length", "30", "material", "EN8")
                .isRefusedAt("hole", "thicker");
        Ask.of("split-bush", "work", "40", "length", "30", "material", "EN8", "clearance", "5")
                .isRefusedAt("clearance", "at most 2 mm");
    }
}
