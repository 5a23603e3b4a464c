package chargehand.trade.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import org.junit.jupiter.api.Test;

/** Tooth strength beside the published rows, which {@code PublishedRowsTest} holds. */
class ToothStrengthTest {
    private static Ask wheel(String... more) {
        var asked = new String[6 + more.length];
        System.arraycopy(new String[] {"teeth", "18", "module", "3", "face", "30"}, 0, asked, 0, 6);
        System.arraycopy(more, 0, asked, 6, more.length);
        return Ask.of("gear", asked);
    }

    @Test
    void form_moreTeeth_isNeverWeaker() {
        double before = 0;
        for (int teeth = 12; teeth <= 2_000; teeth += teeth < 100 ? 1 : 50) {
            double form = Ask.of("gear", "teeth", String.valueOf(teeth), "module", "2")
                    .number("lewisForm");
            assertThat(form).as(teeth + " teeth").isGreaterThan(before);
            before = form;
        }
    }

    @Test
    void stress_goesWithTheLoadAndAgainstTheWidth() {
        double once = wheel("load", "1500 N").megapascals("toothStress");
        assertThat(wheel("load", "3000 N").megapascals("toothStress")).isCloseTo(2 * once, within(1e-9));
        Ask wider = Ask.of("gear", "teeth", "18", "module", "3", "face", "60", "load", "1500 N");
        assertThat(wider.megapascals("toothStress")).isCloseTo(once / 2, within(1e-9));
    }

    @Test
    void speed_raisesTheStressByItsFactor() {
        Ask still = wheel("load", "1500 N");
        Ask fast = wheel("load", "1500 N", "rpm", "600");
        assertThat(fast.megapascals("toothStress") / still.megapascals("toothStress"))
                .isCloseTo(fast.number("speedFactor"), within(1e-9));
        assertThat(fast.number("speedFactor")).isGreaterThan(1);
        assertThat(fast.cautions()).anyMatch(say -> say.contains("competent person"));
    }

    @Test
    void form_ofTeethThatAreNotTabled_isNotGiven() {
        assertThat(Ask.of("gear", "teeth", "18", "module", "3", "pressureAngle", "14.5")
                        .has("lewisForm"))
                .isFalse();
        assertThat(Ask.of("gear", "teeth", "11", "module", "3").has("lewisForm"))
                .isFalse();
        assertThat(Ask.of("gear", "teeth", "18", "module", "3", "shift", "0.2").has("lewisForm"))
                .isFalse();
    }

    @Test
    void strength_wronglyAsked_isRefusedBesideItsField() {
        wheel().isRefusedAt("load", "needed");
        Ask.of("gear", "teeth", "18", "module", "3", "load", "9 N").isRefusedAt("face", "needed");
        Ask.of("gear", "teeth", "18", "module", "3", "rpm", "90").isRefusedAt("load", "needed");
        wheel("load", "9 N", "shift", "0.2").isRefusedAt("load", "without shift");
        Ask.of("gear", "teeth", "40", "module", "2", "mate", "20", "mateInside", "yes")
                .isRefusedAt("mate", "more of them");
    }

    /** A rack touches a tooth at the same two points whatever the wheel: the chord depends on the module alone. */
    @Test
    void constantChord_isTheSameForEveryWheel() {
        double chord = Ask.of("gear", "teeth", "12", "module", "5").mm("constantChord.thickness");
        for (String teeth : new String[] {"20", "57", "400"}) {
            assertThat(Ask.of("gear", "teeth", teeth, "module", "5").mm("constantChord.thickness"))
                    .isCloseTo(chord, within(2e-6));
        }
    }
}
