package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import chargehand.method.plan.NotTaken;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.wish.HolderName;
import chargehand.method.wish.Wishes;
import chargehand.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ways not taken: why not, and the next best. */
class AlternativesTest {
    private static final Planner PLANNER = new Planner(DemoKit.kit(), DemoKit.soundRack());

    @ParameterizedTest
    @CsvSource({"union, 1", "bearing-bush, 1", "ram, 1", "metric-stud, 2", "roller-pin, 4"})
    void whyNot_demoPart_givesEveryHolderOfTheKindAReasonAndNoneIsQuicker(String name, int count) {
        Part part = DemoMethods.part(name);
        Method best = DemoMethods.plan(name, count);
        List<NotTaken> list = PLANNER.whyNot(part, count, Wishes.NONE);
        assertThat(list).isNotEmpty().allSatisfy(each -> {
            SetUp setUp = best.setUps().get(each.setUp() - 1);
            assertThat(each.machine() + each.holder()).isNotEqualTo(setUp.machine() + HolderName.of(setUp.holding()));
            assertThat(each.verdict().says()).endsWith(".");
        });
        assertThat(list).anySatisfy(each -> assertThat(each.verdict()).isInstanceOf(NotTaken.NotPossible.class));
        assertThat(list)
                .flatExtracting(each -> each.longer().stream().toList())
                .isNotEmpty()
                .allSatisfy(longer -> assertThat(longer.seconds()).isNotNegative());
    }

    @Test
    void whyNot_unionOnTheSmallLathe_barDoesNotPassItsSpindle() {
        assertThat(PLANNER.whyNot(DemoMethods.part("union"), 1, Wishes.NONE))
                .filteredOn(each -> each.setUp() == 1 && each.machine().equals("small lathe"))
                .anySatisfy(each -> assertThat(each.verdict().says()).contains("does not pass the spindle's bore"));
    }

    @ParameterizedTest
    @CsvSource({"bearing-bush, 1", "metric-stud, 2", "shim, 4"})
    void others_demoPart_areDifferentAndNoneCountsForLess(String name, int count) {
        Part part = DemoMethods.part(name);
        var best = (Planned.Ready) PLANNER.plan(part, count);
        List<Other> others = PLANNER.others(part, count, Wishes.NONE, 3);
        assertThat(others).isNotEmpty();
        double before = best.bound().counted().seconds();
        for (Other other : others) {
            assertThat(other.ready().method()).isNotEqualTo(best.method());
            assertThat(other.ready().bound().counted().seconds()).isGreaterThanOrEqualTo(before - 1e-6);
            before = other.ready().bound().counted().seconds();
            assertThat(PLANNER.within(part, count, other.wishes()))
                    .isInstanceOfSatisfying(
                            Planned.Ready.class,
                            again -> assertThat(again.method().time())
                                    .isEqualTo(other.ready().method().time()));
        }
    }
}
