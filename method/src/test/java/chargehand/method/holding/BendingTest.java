package chargehand.method.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Holding;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import org.junit.jupiter.api.Test;

/** Bending of beams, strength of materials: F L³ / 3 E I at a free end, 7 F L³ / 768 E I half way to a far bearing. */
final class BendingTest {
    private static final Holding.Support ALONE = new Holding.Support.None();
    private static final Holding.Support CENTRE = new Holding.Support.Centre();
    private static final Material STEEL = Materials.get("EN8");
    private static final Bending BENDING = new Bending(STEEL);

    private static Overhang bar(double length, double diameter) {
        return new Overhang(Length.mm(length), length / diameter);
    }

    /** By hand: half of kc × 0.25 mm × 0.1 mm, on 50 mm of 10 mm bar, I = 490.87 mm⁴. */
    @Test
    void of_barStandingOut_asABeam() {
        double force = 0.5
                * STEEL.kienzle().orElseThrow().specificForce(Length.mm(0.1)).megapascals()
                * 0.025;
        double expected =
                force * 125_000 / (3 * STEEL.physical().elasticModulus().megapascals() * 490.87);
        assertThat(BENDING.of(bar(50, 10), ALONE).mm()).isEqualTo(expected, within(1e-6));
    }

    @Test
    void of_twiceAsLong_eightTimesAsMuch() {
        double once = BENDING.of(bar(50, 10), ALONE).mm();
        assertThat(BENDING.of(bar(100, 10), ALONE).mm()).isEqualTo(8 * once, within(1e-5));
    }

    @Test
    void of_withACentre_sevenPartsOfTwoHundredAndFiftySix() {
        double alone = BENDING.of(bar(50, 10), ALONE).mm();
        assertThat(BENDING.of(bar(50, 10), CENTRE).mm()).isEqualTo(alone * 7 / 256, within(1e-5));
    }

    @Test
    void working_whatNoShopMeasures_untold() {
        assertThat(BENDING.working(bar(10, 20), ALONE, LengthUnit.MILLIMETRE)).isEmpty();
        assertThat(BENDING.working(bar(50, 10), ALONE, LengthUnit.MILLIMETRE)).hasSize(1);
    }
}
