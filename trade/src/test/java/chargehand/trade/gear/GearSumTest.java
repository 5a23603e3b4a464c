package chargehand.trade.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.trade.Ask;
import org.junit.jupiter.api.Test;

class GearSumTest {
    private static Spur spur(int teeth, double module, double degrees, double shift) {
        Angle angle = Angle.degrees(degrees);
        return new Spur(teeth, module, angle, ToothSystem.full(angle), shift);
    }

    @Test
    void involute_inverse_undoesIt() {
        for (double degrees = 0.5; degrees < 75; degrees += 0.5) {
            double angle = Math.toRadians(degrees);
            assertThat(Involute.inverse(Involute.of(angle))).isCloseTo(angle, within(1e-9));
        }
    }

    @Test
    void spur_twiceTheModule_isTwiceAsLargeEverywhere() {
        for (int teeth = 12; teeth < 150; teeth += 7) {
            Spur small = spur(teeth, 1.5, 20, 0.1);
            Spur large = spur(teeth, 3, 20, 0.1);
            assertThat(large.outside()).isCloseTo(2 * small.outside(), within(1e-9));
            assertThat(large.span(3)).isCloseTo(2 * small.span(3), within(1e-9));
            assertThat(large.overPins(6)).isCloseTo(2 * small.overPins(3), within(1e-9));
            assertThat(large.chordalThickness()).isCloseTo(2 * small.chordalThickness(), within(1e-9));
        }
    }

    /** One tooth more in the span adds one base pitch, π m cos α, whatever the wheel. */
    @Test
    void spur_oneToothMoreInTheSpan_addsTheBasePitch() {
        for (double degrees : new double[] {14.5, 20, 25}) {
            Spur spur = spur(40, 2, degrees, 0.2);
            double basePitch = Math.PI * 2 * Math.cos(Math.toRadians(degrees));
            assertThat(spur.span(6) - spur.span(5)).isCloseTo(basePitch, within(1e-9));
        }
    }

    /** A second way to the pins: where the flank of the space, drawn point by point, is a pin radius from its middle. */
    @Test
    void spur_overPins_agreesWithTheDrawnFlank() {
        Spur spur = spur(24, 2, 20, 0);
        double pin = 3.456;
        double centre = (spur.overPins(pin) - pin) / 2;
        double half = Math.PI / 2 / 24 - Involute.of(spur.alpha());
        double nearest = Double.MAX_VALUE;
        for (double roll = 0; roll < 1.2; roll += 1e-5) {
            double radius = spur.base() / 2 * Math.hypot(1, roll);
            double angle = half + roll - Math.atan(roll);
            nearest = Math.min(nearest, Math.hypot(centre - radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        assertThat(nearest).isCloseTo(pin / 2, within(1e-6));
    }

    @Test
    void gear_threePitchesOfOneWheel_giveTheSame() {
        Ask diametral = Ask.of("gear", "teeth", "30", "diametralPitch", "10");
        Ask module = Ask.of("gear", "teeth", "30", "module", "2.54 mm");
        Ask circular = Ask.of("gear", "teeth", "30", "circularPitch", "7.979645 mm");

        assertThat(module.mm("outside")).isEqualTo(diametral.mm("outside"));
        assertThat(circular.mm("outside")).isCloseTo(diametral.mm("outside"), within(1e-4));
        assertThat(diametral.in("outside")).isCloseTo(3.2, within(1e-7));
    }

    @Test
    void gear_fewTeeth_warnsOfUndercutAndHasNoCutter() {
        Ask ask = Ask.of("gear", "teeth", "10", "module", "2");

        assertThat(ask.has("cutter")).isFalse();
        assertThat(ask.cautions()).anyMatch(say -> say.contains("undercut")).anyMatch(say -> say.contains("12 teeth"));
    }

    @Test
    void pressureAngle_leftOut_isSaidToBeTwentyDegrees() {
        Ask silent = Ask.of("gear", "teeth", "30", "module", "2");
        Ask asked = Ask.of("gear", "teeth", "30", "module", "2", "pressureAngle", "20");

        assertThat(silent.mm("base")).isEqualTo(asked.mm("base"));
        assertThat(silent.working()).anyMatch(step -> step.say().contains("No pressure angle is given"));
        assertThat(silent.cautions()).anyMatch(say -> say.contains("14½°"));
        assertThat(asked.working()).noneMatch(step -> step.say().contains("No pressure angle is given"));
    }

    @Test
    void gear_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("gear", "teeth", "30").isRefusedAt("diametralPitch", "give the diametral pitch");
        Ask.of("gear", "teeth", "30", "module", "2", "diametralPitch", "10").isRefusedAt("diametralPitch", "not both");
        Ask.of("gear", "teeth", "30", "module", "900").isRefusedAt("module", "0.05 to 100");
        Ask.of("gear", "teeth", "30", "module", "2", "spanTeeth", "25").isRefusedAt("spanTeeth", "over 4 is best");
        Ask.of("gear", "teeth", "30", "module", "2", "pin", "1 mm").isRefusedAt("pin", "3.456");
        Ask.of("gear", "teeth", "30", "module", "2", "pin", "9 mm").isRefusedAt("pin", "3.456");
        Ask.of("gear", "teeth", "30", "module", "2", "pressureAngle", "45").isRefusedAt("pressureAngle", "30°");
    }

    @Test
    void rack_effortOnALever_addsUpByHand() {
        Ask ask = Ask.of(
                "rack", "teeth", "20", "module", "2", "effort", "100 N", "lever", "200 mm", "travel", "125.66371 mm");

        assertThat(ask.number("turns")).isCloseTo(1, within(1e-6));
        assertThat(ask.newtonMetres("torque")).isCloseTo(20, within(1e-9));
        assertThat(ask.newtons("force")).isCloseTo(1000, within(1e-6));
    }

    @Test
    void rack_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("rack", "teeth", "20", "module", "2", "turns", "1", "travel", "20")
                .isRefusedAt("turns", "not both");
        Ask.of("rack", "teeth", "20", "module", "2", "lever", "200 mm").isRefusedAt("effort", "needed");
        Ask.of("rack", "teeth", "2000", "module", "100", "turns", "1000").isRefusedAt("turns", "further");
    }
}
