package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import org.junit.jupiter.api.Test;

/** What a turner insists on for an old pinion that is bored larger and keyed anew. All common practice. */
class OldPinionRulesTest {
    private static final Method METHOD = DemoMethods.plan("pinion", 1);
    private static final SetUp BORING =
            DemoMethods.setUpsWith(METHOD, Cut.BoreTo.class).getFirst();
    private static final Operation KEYWAY = DemoMethods.operations(METHOD)
            .filter(operation -> operation.cut() instanceof Cut.SlotInBore)
            .findFirst()
            .orElseThrow();

    @Test
    void plan_oldPinion_isItsOwnStockAndItsOutsideIsLeftAlone() {
        assertThat(METHOD.stock().blank()).isInstanceOf(Blank.OldPart.class);
        assertThat(DemoMethods.operations(METHOD))
                .extracting(Operation::cut)
                .allSatisfy(cut -> assertThat(cut)
                        .isInstanceOfAny(
                                Cut.BoreTo.class, Cut.FinishEdge.class, Cut.SlotInBore.class, Cut.Deburr.class));
    }

    /** 17 is not divided by 3, and the bore is to run true to the teeth. */
    @Test
    void plan_boreOfSeventeenTeeth_isDialledByTheTeethAndInNoThreeJaw() {
        assertThat(BORING.holding())
                .isInstanceOfSatisfying(
                        Holding.InChuck.class, chuck -> assertThat(chuck.jaws()).isEqualTo(4));
        assertThat(BORING.instructions()).anySatisfy(say -> assertThat(say).contains("pin laid between the teeth"));
    }

    @Test
    void plan_keyway_isPlanedInTheHoldingOfTheBoreAfterIt() {
        assertThat(BORING.operations()).contains(KEYWAY);
        assertThat(KEYWAY.number())
                .isGreaterThan(BORING.operations().stream()
                        .filter(operation -> operation.cut() instanceof Cut.BoreTo)
                        .findFirst()
                        .orElseThrow()
                        .number());
    }

    @Test
    void plan_keyway_standsStillUnderAnIsolatedDrive() {
        assertThat(KEYWAY.settings().speed()).isEmpty();
        assertThat(KEYWAY.say()).contains("spindle locked", "old keyway");
        assertThat(KEYWAY.cautions()).anySatisfy(caution -> assertThat(caution).contains("isolated"));
    }

    /** The drawing: .165 ±.005 above a bore of 1.625 H7, so 1.7855 to 1.7955 across, from the middle of the bore's limits. */
    @Test
    void plan_keyway_isReadFromTheWallOppositeAndPassed() {
        assertThat(KEYWAY.hold()).isTrue();
        assertThat(KEYWAY.readings().getFirst()).satisfies(reading -> {
            assertThat(reading.what()).contains("d + t");
            assertThat(reading.limits().least().mm()).isCloseTo(1.7855 * 25.4, within(0.01));
            assertThat(reading.limits().most().mm()).isCloseTo(1.7955 * 25.4, within(0.01));
        });
    }

    /** A flat bit touches the bore at its corners first: c = r − √(r² − b²/4) below the top (geometry). */
    @Test
    void plan_dialForTheKeyway_countsFromWhereTheCornersTouch() {
        double radius = 41.2875 / 2;
        double corners = radius - Math.sqrt(radius * radius - 11.1125 * 11.1125 / 4);
        Length dial = KEYWAY.settings().passes().getLast().dial();
        assertThat(dial.mm()).isCloseTo(2 * (4.191 + corners), within(0.03));
    }
}
