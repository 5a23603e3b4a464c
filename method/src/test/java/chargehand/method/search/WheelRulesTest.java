package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import chargehand.method.replay.Proof;
import chargehand.method.replay.Replay;
import chargehand.part.Part;
import org.junit.jupiter.api.Test;

/** What a turner insists on for a wheel with teeth and for holes on a circle. All common practice but where it says so. */
class WheelRulesTest {
    private static final Method RING = DemoMethods.plan("index-ring", 1);

    @Test
    void plan_ring_replaysToThePart() {
        Proof proof = Replay.of(DemoMethods.part("index-ring"), RING, DemoKit.kit());
        assertThat(proof.faults()).isEmpty();
        assertThat(proof.made()).isTrue();
    }

    @Test
    void plan_ring_teethAreCutOnAMandrelInItsBoreAfterEverythingTurned() {
        SetUp last = RING.setUps().getLast();
        SetUp teeth = DemoMethods.setUpsWith(RING, Cut.CutTeeth.class).getFirst();
        assertThat(teeth.machine()).isEqualTo("mill");
        assertThat(teeth.holding()).isInstanceOf(Holding.OnMandrel.class);
        assertThat(DemoMethods.setUpsWith(RING, Cut.TurnDiameter.class))
                .allSatisfy(turned -> assertThat(turned.number()).isLessThan(teeth.number()));
        assertThat(teeth.number()).isLessThanOrEqualTo(last.number());
    }

    /** 73 is prime and on no plate: N (turns + holes / circle) and the plate's own turns come to the 40 of the worm. */
    @Test
    void plan_ring_divides73ByGearingThePlate() {
        Settings.Indexing set = teeth().settings().indexing().orElseThrow();
        Settings.Geared gears = set.geared().orElseThrow();
        double crank = 73 * (set.turns() + (double) set.holes() / set.circle());
        double plate = 1;
        for (int i = 0; i < gears.drivers().size(); i++) {
            plate *= (double) gears.drivers().get(i) / gears.driven().get(i);
        }
        assertThat(crank + (gears.isWithCrank() ? plate : -plate)).isCloseTo(40, within(1e-9));
        assertThat(teeth().cautions()).anySatisfy(said -> assertThat(said).contains("pin"));
    }

    /** 2.25 modules deep (ISO 53), by cutter number 2 for 55 to 134 teeth (from memory, Brown and Sharpe), a light cut last. */
    @Test
    void plan_ring_teethAreCutToFullDepthWithTheCutterOfTheirNumber() {
        Settings settings = teeth().settings();
        assertThat(settings.tool()).contains("module 1").endsWith("number 2");
        assertThat(settings.passes()).hasSizeGreaterThan(1);
        assertThat(settings.passes().getLast().dial().mm()).isCloseTo(2.25, within(0.03));
        assertThat(settings.passes().getLast().leaves().mm()).isCloseTo(70.5, within(0.001));
        assertThat(teeth().hold()).isTrue();
    }

    /** Over nine teeth of 73, module 1, 20°: W = 26.1155 mm, worked by hand from m cos α ((k − ½) π + z inv α). */
    @Test
    void plan_ring_teethAreReadOverSeveralTogether() {
        assertThat(teeth().readings()).singleElement().satisfies(reading -> {
            assertThat(reading.what()).startsWith("over 9 teeth");
            assertThat(reading.limits().most().mm()).isCloseTo(26.1155, within(0.001));
        });
    }

    @Test
    void plan_ring_holesAreDrilledStandingOnAFinishedEndFromTheMiddle() {
        SetUp drilling = DemoMethods.setUpsWith(RING, Cut.DrillCircle.class).getFirst();
        assertThat(drilling.holding())
                .isInstanceOfSatisfying(
                        Holding.OnTable.class, table -> assertThat(table.down()).isEqualTo(Holding.Face.RIGHT));
        Operation drilled = drilling.operations().getFirst();
        assertThat(drilled.say()).contains("1.063 in back").contains("1.063 in right");
    }

    @Test
    void plan_pressureAngleWithoutItsCutter_isRefusedForTheCutter() {
        Part odd = DemoMethods.read(DemoKit.part("index-ring").replace("20°", "14.5°"));
        assertThat(DemoMethods.plan(odd, 1))
                .isInstanceOfSatisfying(
                        Planned.NotHere.class,
                        refused -> assertThat(refused.reasons()).anySatisfy(reason -> {
                            assertThat(reason.code()).isEqualTo(Planned.Code.NO_TOOL);
                            assertThat(reason.unlock())
                                    .contains("module 1")
                                    .contains("14.5°")
                                    .contains("number 2");
                        }));
    }

    private static Operation teeth() {
        return DemoMethods.operations(RING)
                .filter(operation -> operation.cut() instanceof Cut.CutTeeth)
                .findFirst()
                .orElseThrow();
    }
}
