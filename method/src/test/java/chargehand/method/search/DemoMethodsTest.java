package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an experienced turner would insist on, as rules on the method and not as a recorded output. All common practice. */
class DemoMethodsTest {
    /** A diameter is aimed at the middle of its limits, so near its nominal. */
    private static final Length FINE = Length.mm(0.1);

    @Test
    void plan_bush_boreAndOutsideAreFinishedInOneHolding() {
        Method method = DemoMethods.plan("bearing-bush", 1);
        List<SetUp> boring = DemoMethods.setUpsWith(method, Cut.BoreTo.class);
        List<SetUp> turning = DemoMethods.setUpsWith(method, Cut.TurnDiameter.class);
        assertThat(boring).hasSize(1);
        assertThat(turning).isEqualTo(boring);
    }

    @Test
    void plan_bush_oilGrooveIsPlanedInTheHoldingOfTheBore() {
        Method method = DemoMethods.plan("bearing-bush", 1);
        assertThat(DemoMethods.setUpsWith(method, Cut.SlotInBore.class))
                .hasSize(1)
                .isEqualTo(DemoMethods.setUpsWith(method, Cut.BoreTo.class));
    }

    @Test
    void plan_batchOfStuds_areMadeFromBarAndPartedOff() {
        Method method = DemoMethods.plan("gland-stud", 24);
        assertThat(method.count()).isEqualTo(24);
        assertThat(DemoMethods.setUpsWith(method, Cut.PartOff.class)).hasSize(1);
        assertThat(DemoMethods.setUpsWith(method, Cut.SawOff.class)).isEmpty();
    }

    @Test
    void plan_slenderRam_isHeldByACentreWhereItsBarrelIsTurned() {
        Method method = DemoMethods.plan("ram", 1);
        SetUp barrel = setUpThatTurns(method, Length.mm(25));
        assertThat(barrel.holding())
                .isInstanceOfSatisfying(
                        Holding.InChuck.class,
                        chuck -> assertThat(chuck.support()).isInstanceOf(Holding.Support.Centre.class));
    }

    @Test
    void plan_ram_fineDiameterIsAHoldPoint() {
        assertThat(DemoMethods.operations(DemoMethods.plan("ram", 1)).filter(Operation::hold))
                .anySatisfy(operation -> assertThat(operation.cut())
                        .isInstanceOfSatisfying(
                                Cut.TurnDiameter.class,
                                turned -> assertThat(turned.diameter())
                                        .satisfies(diameter -> assertThat(diameter.isWithin(FINE, Length.mm(25)))
                                                .isTrue())));
    }

    @Test
    void plan_leftHandThread_isCutAwayFromTheHeadstock() {
        Operation thread = DemoMethods.operations(DemoMethods.plan("sluice-spindle", 1))
                .filter(operation -> operation.cut() instanceof Cut.ThreadOutside)
                .findFirst()
                .orElseThrow();
        assertThat(thread.say()).contains("away from the headstock");
        assertThat(thread.settings().gearing()).isPresent();
    }

    @Test
    void plan_square_isMilledByQuarterTurnsToHalfTheDifferenceADepthASide() {
        Operation flats = DemoMethods.operations(DemoMethods.plan("sluice-spindle", 1))
                .filter(operation -> operation.cut() instanceof Cut.MillFlats)
                .findFirst()
                .orElseThrow();
        assertThat(flats.settings().indexing()).hasValueSatisfying(index -> {
            assertThat(index.divisions()).isEqualTo(4);
            assertThat(index.turns()).isEqualTo(10);
            assertThat(index.holes()).isZero();
        });
        Length depth = flats.settings().passes().getLast().dial();
        assertThat(depth.mm()).isEqualTo((28.0 - 22.0) / 2, within(0.026));
    }

    @Test
    void plan_union_hexagonIsMilledBeforeItIsGripped() {
        Method method = DemoMethods.plan("union", 2);
        int milled =
                DemoMethods.setUpsWith(method, Cut.MillFlats.class).getFirst().number();
        assertThat(method.setUps())
                .filteredOn(setUp -> setUp.holding() instanceof Holding.InChuck chuck
                        && chuck.grip().diameter().equals(Length.inch(17, 16)))
                .allSatisfy(setUp -> assertThat(setUp.number()).isGreaterThan(milled));
    }

    @Test
    void plan_rollerPin_crossHolesComeAfterAllTurning() {
        Method method = DemoMethods.plan("roller-pin", 1);
        int lastTurning =
                DemoMethods.setUpsWith(method, Cut.TurnDiameter.class).getLast().number();
        assertThat(DemoMethods.setUpsWith(method, Cut.DrillAcross.class))
                .isNotEmpty()
                .allSatisfy(setUp -> assertThat(setUp.number()).isGreaterThan(lastTurning));
    }

    @Test
    void plan_shims_facesAreCutBeforeHoles() {
        Method method = DemoMethods.plan("shim", 40);
        int lastFace =
                DemoMethods.setUpsWith(method, Cut.MillFace.class).getLast().number();
        assertThat(DemoMethods.setUpsWith(method, Cut.DrillHole.class))
                .hasSize(1)
                .allSatisfy(setUp -> assertThat(setUp.number()).isGreaterThan(lastFace));
    }

    @Test
    void plan_threadNoDieAndNoTrain_saysWhatWouldUnlockIt() {
        var part = DemoMethods.read("""
                part: Instrument screw
                material: EN3
                unit: in
                general: ±.010
                outside:
                  - thread: 3 BA
                    length: 5/8
                  - round: 3/8
                    length: 1
                """);
        Planned planned = DemoMethods.plan(part, 1);
        assertThat(planned)
                .isInstanceOfSatisfying(
                        Planned.NotHere.class,
                        notHere -> assertThat(notHere.reasons())
                                .extracting(Planned.Reason::code)
                                .containsExactly(Planned.Code.NO_THREAD_WAY));
    }

    @Test
    void plan_materialNobodyKnows_saysWhatItIsCutAs() {
        var rack = (RackRead.Sound) RackFile.read("""
                rack: one piece
                unit: mm
                pieces:
                  - {name: Z1, place: rack, material: unobtainium, sure: marked, round: 25, length: 1 m, condition: bright, price: 1}
                """);
        var part = DemoMethods.read("""
                part: Odd pin
                material: unobtainium
                unit: mm
                general: ISO 2768-m
                outside:
                  - round: 20
                    length: 30
                """);
        Planned planned = new Planner(DemoKit.kit(), rack.rack()).plan(part, 1);
        assertThat(planned)
                .isInstanceOfSatisfying(
                        Planned.Ready.class,
                        ready -> assertThat(ready.method().cautions())
                                .anySatisfy(caution -> assertThat(caution).contains("'unobtainium'", "EN8")));
    }

    @ParameterizedTest
    @CsvSource({
        "union, 2",
        "gland-stud, 24",
        "bearing-bush, 1",
        "ram, 1",
        "roller-pin, 1",
        "shim, 40",
        "metric-stud, 1",
        "relief-packer, 6",
        "capstan-shaft, 1",
        "pinion, 1",
        "sluice-spindle, 1"
    })
    void plan_everyDemoPart_keepsTheTradesOrder(String name, int count) {
        Method method = DemoMethods.plan(name, count);
        for (SetUp setUp : method.setUps()) {
            List<Cut> cuts = setUp.operations().stream().map(Operation::cut).toList();
            assertBefore(cuts, Cut.FaceEnd.class, Cut.DrillAxial.class);
            assertBefore(cuts, Cut.CentreHole.class, Cut.DrillAxial.class);
            assertBefore(cuts, Cut.DrillAxial.class, Cut.BoreTo.class);
            assertBefore(cuts, Cut.BoreTo.class, Cut.ReamTo.class);
            assertBefore(cuts, Cut.TurnDiameter.class, Cut.CutGroove.class);
            assertBefore(cuts, Cut.CutGroove.class, Cut.ThreadOutside.class);
            assertBefore(cuts, Cut.FinishEdge.class, Cut.ThreadOutside.class);
            assertBefore(cuts, Cut.ThreadOutside.class, Cut.PartOff.class);
            assertThat(setUp.operations()).extracting(Operation::number).isSorted();
        }
    }

    private static void assertBefore(List<Cut> cuts, Class<?> first, Class<?> then) {
        int lastFirst = -1;
        int firstThen = Integer.MAX_VALUE;
        for (int i = 0; i < cuts.size(); i++) {
            if (first.isInstance(cuts.get(i))) {
                lastFirst = Math.max(lastFirst, i);
            }
            if (then.isInstance(cuts.get(i))) {
                firstThen = Math.min(firstThen, i);
            }
        }
        if (lastFirst >= 0 && firstThen < Integer.MAX_VALUE && first != Cut.FinishEdge.class) {
            assertThat(lastFirst)
                    .as("%s before %s", first.getSimpleName(), then.getSimpleName())
                    .isLessThan(firstThen);
        }
    }

    private static SetUp setUpThatTurns(Method method, Length diameter) {
        return method.setUps().stream()
                .filter(setUp -> setUp.operations().stream()
                        .anyMatch(operation -> operation.cut() instanceof Cut.TurnDiameter turned
                                && turned.diameter().isWithin(FINE, diameter)))
                .findFirst()
                .orElseThrow();
    }
}
