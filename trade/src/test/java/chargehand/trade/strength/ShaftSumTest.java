package chargehand.trade.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShaftSumTest {
    static List<PublishedRow> rounds() {
        return PublishedRow.of("strength.json", "shaft_torsion");
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void shaft_ofRow_hasTheStressComputed(PublishedRow row) {
        Ask ask = Ask.of("shaft", "allowable", "60 MPa", "size", row.text("d_mm"), "torque", row.text("T_Nm") + " Nm");

        double stress = ask.megapascals("shearStress");
        assertThat(stress).isCloseTo(row.want("tau_MPa"), row.within("tau_MPa"));
        assertThat(ask.number("factor")).isCloseTo(60 / stress, within(1e-9));
        assertThat(ask.newtonMetres("torqueCapacity")).isCloseTo(row.number("T_Nm") * 60 / stress, within(1e-6));
    }

    @Test
    void shaft_torqueByPowerOrLever_isTheSame() {
        Ask direct = Ask.of("shaft", "material", "EN8", "size", "30", "torque", "60 Nm");
        Ask lever = Ask.of("shaft", "material", "EN8", "size", "30", "effort", "200 N", "lever", "300 mm");
        Ask power = Ask.of("shaft", "material", "EN8", "size", "30", "power", "6283.185307 W", "rpm", "1000");

        assertThat(lever.megapascals("shearStress")).isCloseTo(direct.megapascals("shearStress"), within(1e-9));
        assertThat(power.megapascals("shearStress")).isCloseTo(direct.megapascals("shearStress"), within(1e-6));
    }

    @Test
    void shaft_keyed_mayCarryThreeQuarters() {
        Ask plain = Ask.of("shaft", "material", "EN8", "size", "30", "torque", "60 Nm");
        Ask keyed = Ask.of("shaft", "material", "EN8", "size", "30", "torque", "60 Nm", "keyed", "yes");

        assertThat(keyed.newtonMetres("torqueCapacity"))
                .isCloseTo(0.75 * plain.newtonMetres("torqueCapacity"), within(1e-9));
    }

    @Test
    void shaft_twist_isThatOfTheMaterial() {
        // θ/L = T / (G J): 100 N·m on 25 mm steel of G = 207/(2·1.29) GPa (formula only).
        Ask ask = Ask.of("shaft", "material", "mild steel", "size", "25", "torque", "100 Nm");
        double stiffness = 207_000 / 2.58;
        double polar = Math.PI * Math.pow(25, 4) / 32;

        assertThat(ask.degrees("twistPerLength"))
                .isCloseTo(Math.toDegrees(100_000 * 1000 / (stiffness * polar)), within(1e-9));
    }

    @Test
    void shaft_tooSmall_saysSo() {
        Ask ask = Ask.of("shaft", "material", "mild steel", "size", "10", "torque", "100 Nm");

        assertThat(ask.number("factor")).isLessThan(1);
        assertThat(ask.cautions())
                .anyMatch(say -> say.contains("too small"))
                .anyMatch(say -> say.contains("competent"));
    }

    @Test
    void shaft_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("shaft", "size", "25", "torque", "10 Nm").isRefusedAt("material", "stress that is allowed");
        Ask.of("shaft", "material", "EN8", "size", "25").isRefusedAt("torque", "power and speed");
        Ask.of("shaft", "material", "EN8", "size", "25", "power", "2 hp").isRefusedAt("rpm", "needed with the power");
        Ask.of("shaft", "material", "EN8", "size", "25", "lever", "200").isRefusedAt("effort", "needed with the lever");
        Ask.of("shaft", "material", "EN8", "size", "25", "torque", "9 Nm", "rpm", "9")
                .isRefusedAt("torque", "one or the");
        Ask.of("shaft", "material", "EN8", "size", "25", "torque", "0 Nm").isRefusedAt("torque", "more than nothing");
        Ask.of("shaft", "material", "EN8", "shape", "hollow", "size", "25", "torque", "9 Nm")
                .isRefusedAt("bore", "needs its bore");
        Ask.of("shaft", "material", "EN8", "size", "25", "bore", "25", "torque", "9 Nm")
                .isRefusedAt("bore", "smaller");
        Ask.of("shaft", "material", "EN8", "shape", "square", "size", "25", "bore", "9", "torque", "9 Nm")
                .isRefusedAt("bore", "no simple rule");
        Ask.of("shaft", "material", "EN8", "size", "10", "torque", "1 Nm", "bending", "900 Nm")
                .isRefusedAt("bending", "takes up all");
        Ask.of("shaft", "material", "cheese", "size", "10", "torque", "1 Nm").isRefusedAt("material", "not a material");
    }

    @Test
    void flat_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("shaft", "material", "EN8", "shape", "flat", "size", "8", "torque", "9 Nm")
                .isRefusedAt("width", "needs its width");
        Ask.of("shaft", "material", "EN8", "shape", "flat", "size", "8", "width", "7", "torque", "9 Nm")
                .isRefusedAt("width", "wider side");
        Ask.of("shaft", "material", "EN8", "size", "8", "width", "20", "torque", "9 Nm")
                .isRefusedAt("width", "only a flat");
        Ask.of("shaft", "material", "EN8", "shape", "flat", "size", "8", "width", "20", "bore", "3", "torque", "9 Nm")
                .isRefusedAt("bore", "no simple rule");
    }
}
