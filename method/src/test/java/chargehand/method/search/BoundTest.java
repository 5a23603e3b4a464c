package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.WorkTime;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Planned;
import chargehand.part.testing.PartGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a method says of how quick it is. */
class BoundTest {
    @ParameterizedTest
    @CsvSource({"union, 2", "gland-stud, 24", "ram, 1", "shim, 40"})
    void plan_demoPart_isTheQuickestWeighed(String name, int count) {
        var ready = (Planned.Ready) DemoMethods.plan(DemoMethods.part(name), count);
        assertThat(ready.bound().isQuickest()).isTrue();
        assertThat(ready.bound().gap()).isZero();
        assertThat(ready.bound().says()).startsWith("The quickest of all that was weighed");
        assertThat(ready.bound().counted())
                .isGreaterThanOrEqualTo(ready.method().time());
    }

    @Test
    void plan_randomParts_neverTakeLessThanTheBound() {
        var generator = new PartGenerator(20261130);
        var planner = new Planner(DemoKit.kit(), DemoKit.soundRack());
        for (int i = 0; i < 60; i++) {
            if (planner.plan(generator.part(), 1) instanceof Planned.Ready ready) {
                assertThat(ready.bound().gap()).isNotNegative();
                assertThat(ready.bound().counted().seconds())
                        .isGreaterThanOrEqualTo(ready.method().time().seconds() - 1e-6);
            }
        }
    }

    @Test
    void says_searchEndedEarly_givesTheGap() {
        var bound = new Bound(WorkTime.minutes(63), WorkTime.minutes(60), 2, 1, false);
        assertThat(bound.isQuickest()).isFalse();
        assertThat(bound.gap()).isEqualTo(0.05, within(1e-9));
        assertThat(bound.says())
                .contains("none can take less than 1 h", "at most 5.0 % longer", "1 more, dearer in metal");
    }
}
