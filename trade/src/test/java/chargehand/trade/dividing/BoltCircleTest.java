package chargehand.trade.dividing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoltCircleTest {
    private static final double TWO_ROUNDINGS = 3e-6;

    @Test
    void places_ofAnyCircle_lieOnItAChordApart() {
        for (int holes = 2; holes <= 60; holes++) {
            var circle = new BoltCircle(Length.mm(80), holes);
            List<BoltCircle.Place> places = circle.places();
            assertThat(places).hasSize(holes);
            for (int i = 0; i < holes; i++) {
                BoltCircle.Place here = places.get(i);
                BoltCircle.Place next = places.get((i + 1) % holes);
                assertThat(here.hole()).isEqualTo(i + 1);
                assertThat(Math.hypot(here.across().mm(), here.up().mm())).isCloseTo(40, within(TWO_ROUNDINGS));
                double apart = Math.hypot(
                        next.across().minus(here.across()).mm(),
                        next.up().minus(here.up()).mm());
                assertThat(apart).isCloseTo(80 * Math.sin(Math.PI / holes), within(TWO_ROUNDINGS));
            }
        }
    }

    @Test
    void places_ofFour_areTheQuartersOfTheClock() {
        assertThat(new BoltCircle(Length.mm(100), 4).places())
                .containsExactly(
                        new BoltCircle.Place(1, Length.mm(50), Length.ZERO),
                        new BoltCircle.Place(2, Length.ZERO, Length.mm(50)),
                        new BoltCircle.Place(3, Length.mm(-50), Length.ZERO),
                        new BoltCircle.Place(4, Length.ZERO, Length.mm(-50)));
    }
}
