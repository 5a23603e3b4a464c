package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Planned;
import chargehand.method.rack.Rack;
import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The search beside a planner that never looks ahead: it is never worse, and on the whole better. */
class FixedOrderTest {
    private static final int PARTS = 120;
    private static final double SAME_SECONDS = 1e-6;

    private final List<Double> ratios = new ArrayList<>();
    private int searched;

    @Test
    void plan_demoAndRandomParts_neverTakesLongerThanTheFixedOrder() {
        Rack rack = DemoKit.soundRack();
        var planner = new Planner(DemoKit.kit(), rack);
        for (String name :
                List.of("union", "gland-stud", "bearing-bush", "ram", "roller-pin", "metric-stud", "sluice-spindle")) {
            compare(planner, DemoMethods.part(name), 2);
        }
        var generator = new PartGenerator(20261201);
        for (int i = 0; i < PARTS; i++) {
            compare(planner, generator.part(), 1 + i % 3);
        }
        assertThat(ratios)
                .as("parts that the fixed order makes too, of %d", searched)
                .hasSizeGreaterThan(15);
        assertThat(ratios.stream().mapToDouble(ratio -> ratio).average().orElseThrow())
                .as("time of the fixed order over that of the search")
                .isGreaterThan(1.02);
    }

    private void compare(Planner planner, Part part, int count) {
        Planned planned = planner.plan(part, count);
        Optional<PlainMethod> plain = planner.inFixedOrder(part, count);
        if (planned instanceof Planned.Ready ready) {
            searched++;
            plain.ifPresent(other -> {
                assertThat(ready.bound().counted().seconds())
                        .as("%s: %s", part.title(), part.body())
                        .isLessThanOrEqualTo(other.counted().seconds() + SAME_SECONDS);
                ratios.add(other.counted().seconds() / ready.bound().counted().seconds());
            });
        } else {
            assertThat(plain)
                    .as("the fixed order makes what the search does not: %s", part.body())
                    .isEmpty();
        }
    }
}
