package chargehand.trade.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ThinRingTest {
    private static final Pressure STEEL = Pressure.megapascals(200_000);
    private static final Force PUSH = Force.newtons(1_000);

    private static ThinRing ring(double wall) {
        return new ThinRing(Length.mm(50), Length.mm(wall), Length.mm(12), STEEL);
    }

    /** F r³ / (E I) of the ring with a wall of 10 mm: 1000 N × 50³ / (200 000 × 1000). */
    private static final double UNIT = 0.625;

    /**
     * A ring between two opposite forces gets shorter between them by 0.149 F r³ / (E I) and wider across by 0.137
     * (Timoshenko, Strength of Materials, and any handbook's table of rings; from memory).
     */
    @Test
    void moved_twoOppositeForces_asInTheHandbook() {
        assertThat(2 * ring(10).moved(2, PUSH, 0, 0) / UNIT).isEqualTo(0.149, within(0.001));
        assertThat(-2 * ring(10).moved(2, PUSH, 0, Math.PI / 2) / UNIT).isEqualTo(0.137, within(0.001));
    }

    /**
     * The closed form for n equal forces, half the angle between them θ: under a force it goes in by
     * F r³ / (2 E I) × ((θ + sin θ cos θ) / (2 sin² θ) − 1 / θ). Derived from the bending moment by Castigliano's theorem.
     */
    @ParameterizedTest
    @CsvSource({"2", "3", "4", "6"})
    void moved_anyNumberOfForces_agreesWithTheClosedForm(int jaws) {
        double half = Math.PI / jaws;
        double sin = Math.sin(half);
        double closed = ((half + sin * Math.cos(half)) / (2 * sin * sin) - 1 / half) / 2;
        assertThat(ring(10).moved(jaws, PUSH, 0, 0) / UNIT).isEqualTo(closed, within(2e-5));
    }

    @Test
    void outOfRound_halfTheWall_eightTimesAsMuch() {
        double thick = ring(10).outOfRound(3, PUSH, 0).mm();
        assertThat(ring(5).outOfRound(3, PUSH, 0).mm()).isEqualTo(8 * thick, within(1e-5));
    }

    @Test
    void outOfRound_jawsThatMeetAllRound_none() {
        assertThat(ring(5).outOfRound(3, PUSH, Math.toRadians(60)).mm()).isEqualTo(0, within(1e-9));
    }

    @Test
    void outOfRound_widerJaws_less() {
        assertThat(ring(5).outOfRound(3, PUSH, Math.toRadians(50)))
                .isLessThan(ring(5).outOfRound(3, PUSH, Math.toRadians(5)));
    }
}
