package chargehand.drawing.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Dash lengths: ISO 128-2, in multiples of the line's width (from memory of the standard). */
final class LineStyleTest {
    @Test
    void dashes_aChainLine_beginsAndEndsWithALongDash() {
        for (double length = 14; length < 200; length += 0.7) {
            List<Double> dashes = LineStyle.CHAIN.dashes(length);
            double period = dashes.stream().mapToDouble(Double::doubleValue).sum();
            double over = (length - dashes.getFirst()) / period;

            assertThat(dashes).hasSize(4);
            assertThat(over).isCloseTo(Math.rint(over), within(1e-9));
            assertThat(dashes.getFirst()).isBetween(0.75 * 6, 1.35 * 6);
        }
    }

    @Test
    void dashes_tooShortForAPattern_isContinuous() {
        assertThat(LineStyle.CHAIN.dashes(8)).isEmpty();
        assertThat(LineStyle.WIDE.dashes(80)).isEmpty();
    }

    @Test
    void dashesRound_aCircle_holdsAWholeNumberOfPatterns() {
        double around = 2 * Math.PI * 20;
        double period = LineStyle.CHAIN.dashesRound(around).stream()
                .mapToDouble(Double::doubleValue)
                .sum();

        assertThat(around / period).isCloseTo(Math.rint(around / period), within(1e-9));
    }

    @Test
    void width_wideToNarrow_isTwoToOne() {
        assertThat(LineStyle.WIDE.width()).isEqualTo(2 * LineStyle.NARROW.width());
    }
}
