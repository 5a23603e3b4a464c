package chargehand.method.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a method comes to, reckoned again by hand. */
final class EstimatorTest {
    private static final double A_SECOND = 1;

    private static Method plan(String name, int count) {
        Part part = ((PartReading.Read) PartFile.read(DemoKit.part(name))).part();
        return ((Planned.Ready) new Planner(DemoKit.kit(), DemoKit.soundRack()).plan(part, count)).method();
    }

    private static Estimate estimate(Method method) {
        return Estimator.of(method, DemoKit.kit(), DemoKit.soundRack());
    }

    @ParameterizedTest
    @CsvSource({"union, 2", "gland-stud, 24", "bearing-bush, 1", "ram, 1", "roller-pin, 4", "shim, 40"})
    void of_demoPart_isTheMethodsTimeSharedOut(String name, int count) {
        Method method = plan(name, count);
        Estimate estimate = estimate(method);
        assertThat(estimate.time().likely().seconds()).isCloseTo(method.time().seconds(), within(A_SECOND));
        assertThat(estimate.time().least()).isLessThan(estimate.time().likely());
        assertThat(estimate.time().most()).isGreaterThan(estimate.time().likely());
        assertThat(estimate.shares()).hasSameSizeAs(method.setUps()).allSatisfy(share -> {
            assertThat(share.handling().seconds()).isNotNegative();
            assertThat(share.cutting().seconds()).isNotNegative();
            assertThat(share.gauging().seconds()).isNotNegative();
        });
    }

    /** By hand, with the rates and prices of the demo's own files and the density of steel, 7850 kg/m3 (from memory). */
    @Test
    void of_gaugesOnTheBar_costWhatTheyDoByHand() {
        Method method = plan("gland-stud", 24);
        Estimate.Cost cost = estimate(method).cost().orElseThrow();
        double work = method.setUps().stream()
                .mapToDouble(setUp ->
                        setUp.time(24).seconds() / 3600 * (42 + (setUp.machine().startsWith("small") ? 6 : 11)))
                .sum();
        assertThat(method.stock().piece()).isEqualTo("A6");
        assertThat(cost.work().likely()).isCloseTo(work, within(0.01));
        double across = 15.875;
        double metres = new Metal(method, DemoKit.kit()).perPiece().mm() / 1000 * 24;
        double kilograms = Math.PI / 4 * across * across / 1e6 * metres * 7850;
        assertThat(cost.material().orElseThrow().amount()).isCloseTo(kilograms * 2.9 * 1.15, within(0.02 * kilograms));
        assertThat(cost.all().likely())
                .isCloseTo(work + cost.material().orElseThrow().amount(), within(1e-6));
    }

    @Test
    void of_kitWithoutRates_isHoursAlone() {
        var bare = new Kit(DemoKit.kit().machines(), DemoKit.kit().tooling());
        Estimate estimate = Estimator.of(plan("bearing-bush", 1), bare, DemoKit.soundRack());
        assertThat(estimate.cost()).isEmpty();
        assertThat(estimate.missing()).anySatisfy(say -> assertThat(say).contains("rates:"));
    }
}
