package chargehand.trade.fit;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.Ask;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChooseFitSumTest {
    /** First choices by ANSI B4.2 and BS 4500 (from memory, partly compared with a published table). */
    @ParameterizedTest
    @CsvSource({
        "running, H8, f7",
        "sliding, H7, g6",
        "location, H7, h6",
        "light press, H7, n6",
        "press, H7, s6",
        "shrink, H7, u6",
    })
    void fits_ofDuty_beginWithTheUsualOne(String duty, String hole, String shaft) {
        Ask ask = Ask.of("choose-fit", "size", "40 mm", "duty", duty);

        assertThat(ask.text("fits.0.hole")).isEqualTo(hole);
        assertThat(ask.text("fits.0.shaft")).isEqualTo(shaft);
        assertThat(ask.text("fits.0.source")).contains("ANSI B4.2");
    }

    @Test
    void fits_limits_areThoseOfTheFitSum() {
        Ask chosen = Ask.of("choose-fit", "size", "50 mm", "duty", "sliding");
        Ask fit = Ask.of("fit", "size", "50 mm", "hole", "H7", "shaft", "g6");

        assertThat(chosen.figure("fits.0.clearanceMax")).isEqualTo(fit.figure("clearanceMax"));
        assertThat(chosen.figure("fits.0.holeMin")).isEqualTo(fit.figure("hole.min"));
    }

    @Test
    void fits_runningOnesHaveRoom_pressedOnesHaveNone() {
        for (String size : new String[] {"6", "25", "80", "250"}) {
            Ask running = Ask.of("choose-fit", "size", size, "duty", "running");
            Ask press = Ask.of("choose-fit", "size", size, "duty", "press");
            for (int i = 0; i < running.many("fits").size(); i++) {
                assertThat(running.length("fits." + i + ".clearanceMin").isNegative())
                        .isFalse();
            }
            for (int i = 0; i < press.many("fits").size(); i++) {
                assertThat(press.length("fits." + i + ".clearanceMax").isPositive())
                        .isFalse();
            }
        }
    }

    @Test
    void fits_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("choose-fit", "size", "40", "duty", "wobble").isRefusedAt("duty", "running");
        Ask.of("choose-fit", "size", "4000", "duty", "press").isRefusedAt("size", "3150");
    }
}
