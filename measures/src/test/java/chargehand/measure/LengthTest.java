package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lengths in whole nanometres: the two units are inverse, and the usual fine steps are exact. */
class LengthTest {
    @Test
    void in_thereAndBackThroughEitherUnit_isTheSameLength() {
        var random = new Random(61);
        for (int i = 0; i < 10_000; i++) {
            long most = (long) Math.pow(10, 2 + random.nextInt(11));
            var length = new Length(random.nextLong(-most, most + 1));
            assertThat(Length.mm(length.mm())).isEqualTo(length);
            assertThat(Length.in(length.in())).isEqualTo(length);
            assertThat(Length.mm(length.in(LengthUnit.INCH) * 25.4)).isEqualTo(length);
        }
    }

    @Test
    void steps_ofTheTrade_areWholeNanometres() {
        assertThat(Length.inch(1, 64).times(64)).isEqualTo(Length.in(1));
        assertThat(Length.thou(0.1).times(10_000)).isEqualTo(Length.in(1));
        assertThat(Length.in(5).nanometres()).isEqualTo(127 * Length.NM_PER_MM);
        assertThat(Length.mm(0.001).nanometres()).isEqualTo(1_000);
    }

    @Test
    void of_whatIsNoLength_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.mm(Double.NaN))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> Length.mm(1e9)).withMessageContaining("1000 m");
        assertThatIllegalArgumentException().isThrownBy(() -> Length.inch(1, 0)).withMessageContaining("Infinity");
        assertThatIllegalArgumentException().isThrownBy(() -> Length.mm(1).over(Length.ZERO));
    }
}
