package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Limits shown in another unit or to fewer decimals never widen (common practice). */
class LimitsTest {
    private static final Limits H7_SHAFT = new Limits(Length.mm(24.979), Length.mm(25));

    @Test
    void inwardText_metricLimits_showInEitherUnit() {
        assertThat(LimitsText.inward(H7_SHAFT, LengthUnit.MILLIMETRE, 3)).isEqualTo("25.000/24.979 mm");
        assertThat(LimitsText.inward(H7_SHAFT, LengthUnit.MILLIMETRE, 2)).isEqualTo("25.00/24.98 mm");
        assertThat(LimitsText.inward(H7_SHAFT, LengthUnit.INCH, 4)).isEqualTo(".9842/.9835 in");
    }

    @Test
    void inwardText_tooFewDecimals_showsAsManyMoreAsAreNeeded() {
        assertThat(LimitsText.inward(H7_SHAFT, LengthUnit.INCH, 2)).isEqualTo(".9842/.9835 in");
    }

    @Test
    void inwardText_anyLimits_neverWidens() {
        var random = new Random(41);
        for (int i = 0; i < 5_000; i++) {
            Limits limits = any(random);
            for (LengthUnit unit : LengthUnit.values()) {
                String text = LimitsText.inward(limits, unit, random.nextInt(5));
                int slash = text.indexOf('/');
                Length most = read(text.substring(0, slash) + " " + unit.symbol());
                Length least = read(text.substring(slash + 1));
                assertThat(most).as(text).isLessThanOrEqualTo(limits.most());
                assertThat(least)
                        .as(text)
                        .isGreaterThanOrEqualTo(limits.least())
                        .isLessThanOrEqualTo(most);
            }
        }
    }

    @Test
    void inward_step_givesTheWidestWholeSteps() {
        assertThat(H7_SHAFT.inward(Length.mm(0.01))).contains(new Limits(Length.mm(24.98), Length.mm(25)));
        assertThat(H7_SHAFT.inward(Length.thou(1))).contains(new Limits(Length.in(0.984), Length.in(0.984)));
        assertThat(new Limits(Length.mm(0.011), Length.mm(0.019)).inward(Length.mm(0.01)))
                .isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> H7_SHAFT.inward(Length.ZERO));
    }

    @Test
    void inward_anyStep_liesWithinAndWastesLessThanTwoSteps() {
        var random = new Random(42);
        for (int i = 0; i < 5_000; i++) {
            Limits limits = any(random);
            var step = new Length(random.nextLong(1, 100_000));
            limits.inward(step).ifPresent(inward -> {
                assertThat(limits.contain(inward.least()) && limits.contain(inward.most()))
                        .isTrue();
                assertThat(inward.least().nanometres() % step.nanometres()).isZero();
                assertThat(limits.tolerance().minus(inward.tolerance())).isLessThan(step.times(2));
            });
        }
    }

    private static Limits any(Random random) {
        var least = new Length(random.nextLong(-50_000_000, 500_000_000));
        return new Limits(least, least.plus(new Length(random.nextLong(1, 1_000_000))));
    }

    private static Length read(String text) {
        return LengthReader.read(text, LengthUnit.MILLIMETRE).length();
    }
}
