package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.replay.Replay;
import chargehand.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a turner would hold odd work, as rules on the method. All common practice; every method here is replayed too. */
final class HoldingRulesTest {
    private static Part part(String rest) {
        return DemoMethods.read("part: Held work\nunit: mm\nmaterial: EN8\ngeneral: ISO 2768-m\n" + rest);
    }

    private static Method plan(Part part, int count) {
        Planned planned = DemoMethods.plan(part, count);
        assertThat(planned).isInstanceOf(Planned.Ready.class);
        Method method = ((Planned.Ready) planned).method();
        assertThat(Replay.of(part, method, DemoKit.kit()).faults()).isEmpty();
        return method;
    }

    private static List<Holding.InChuck> inChucks(Method method) {
        return method.setUps().stream()
                .map(SetUp::holding)
                .filter(Holding.InChuck.class::isInstance)
                .map(Holding.InChuck.class::cast)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"38 H7", "37.5"})
    void plan_thinRing_isNeverHeldByItsRimInHardJaws(String bore) {
        Method method = plan(
                part("outside: [{round: 42 h7, name: rim, length: 20}]\ninside: [{bore: " + bore + ", name: bore}]\n"),
                1);
        assertThat(inChucks(method))
                .filteredOn(chuck -> chuck.grip().diameter().mm() < 43)
                .isNotEmpty()
                .allSatisfy(chuck -> assertThat(chuck.bearing()).isInstanceOf(Holding.Bearing.SoftJaws.class));
    }

    /** Of bar that leaves its outside to be turned first, the ring is not bored in hard jaws either, three or four. */
    @ParameterizedTest
    @ValueSource(ints = {45, 60, 120})
    void plan_thinRingFromAnyBar_isNeverBoredInHardJaws(int bar) {
        var rack = (RackRead.Sound)
                RackFile.read("rack: one\nunit: mm\npieces:\n  - {name: Z1, place: rack, material: EN8,"
                        + " sure: marked, round: " + bar + ", length: 1 m, condition: bright, price: 1}\n");
        Part ring = part("outside: [{round: 42 h7, name: rim, length: 20}]\ninside: [{bore: 38 H7, name: bore}]\n");
        Planned planned = new Planner(DemoKit.kit(), rack.rack()).plan(ring, 1);
        assertThat(planned).isInstanceOf(Planned.Ready.class);
        Method method = ((Planned.Ready) planned).method();
        assertThat(Replay.of(ring, method, DemoKit.kit()).faults()).isEmpty();
        assertThat(inChucks(method))
                .filteredOn(chuck -> chuck.grip().diameter().mm() < 43)
                .allSatisfy(chuck -> assertThat(chuck.bearing()).isNotInstanceOf(Holding.Bearing.Closing.class));
    }

    @Test
    void plan_softJaws_areBoredToTheWorkBeforeItGoesIn() {
        Method method = plan(part("outside: [{round: 42 h7, length: 20}]\ninside: [{bore: 38 H7}]\n"), 1);
        SetUp soft = method.setUps().stream()
                .filter(setUp -> setUp.holding() instanceof Holding.InChuck chuck
                        && chuck.bearing() instanceof Holding.Bearing.SoftJaws)
                .findFirst()
                .orElseThrow();
        assertThat(soft.instructions()).anySatisfy(say -> assertThat(say).startsWith("Bore them to fit the work"));
        assertThat(soft.working()).anySatisfy(step -> assertThat(step.say()).startsWith("Out of round"));
    }

    /** Bare jaws bear only on what will be cut away. */
    @ParameterizedTest
    @ValueSource(strings = {"union", "bearing-bush", "ram", "roller-pin", "metric-stud", "sluice-spindle"})
    void plan_finishedSurface_isPackedOrInSoftJaws(String name) {
        Method method = DemoMethods.plan(name, 1);
        assertThat(Replay.of(DemoMethods.part(name), method, DemoKit.kit()).faults())
                .isEmpty();
        for (SetUp setUp : method.setUps()) {
            if (setUp.holding() instanceof Holding.InChuck chuck
                    && chuck.bearing().equals(new Holding.Bearing.Closing(true))) {
                assertThat(setUp.instructions())
                        .anySatisfy(say -> assertThat(say).startsWith("Copper or card"));
            }
        }
    }

    @Test
    void plan_boreAndOutsideTied_areFinishedInOneHoldingOrTheLaterHeldTrueByTheEarlier() {
        Method method = plan(part("""
                outside: [{round: 40 p6, name: outside, length: 60}]
                inside: [{ream: 25, name: bore}]
                ties: [{run-out: 0.02, of: outside, to: bore}]
                """), 1);
        int reamed = DemoMethods.setUpsWith(method, Cut.ReamTo.class).getLast().number();
        SetUp turned = DemoMethods.setUpsWith(method, Cut.TurnDiameter.class).getLast();
        assertThat(turned.number() == reamed || turned.holding() instanceof Holding.OnMandrel)
                .isTrue();
    }

    @Test
    void plan_thinDisc_isHeldSeatedAndThenByItsBore() {
        Method method = plan(part("""
                outside: [{round: 58, name: rim, length: 8, at-a: chamfer 1, at-b: chamfer 1}]
                inside: [{bore: 25 H7, name: bore}]
                """), 1);
        SetUp first = DemoMethods.setUpsWith(method, Cut.BoreTo.class).getFirst();
        assertThat(first.instructions()).anySatisfy(say -> assertThat(say).contains("square against the steps"));
        assertThat(DemoMethods.setUpsWith(method, Cut.TurnDiameter.class))
                .allSatisfy(setUp ->
                        assertThat(setUp.holding()).isInstanceOfAny(Holding.OnMandrel.class, Holding.OnStub.class));
    }

    /** A lathe whose spindle the shaft does not pass through: its ends are worked in the fixed steady. */
    @Test
    void plan_longShaftTooThickForTheSpindle_isHeldInTheFixedSteady() {
        Part shaft = part("""
                outside: [{round: 25, name: shank, length: 260, at-b: chamfer 1}]
                inside: [{tap: M10, name: end thread, from: A, depth: 20}]
                """);
        Kit narrow = DemoKit.kitWith(text -> text.replace("spindle-bore: 52", "spindle-bore: 20")
                .replace("spindle-bore: 1 1/16", "spindle-bore: 3/4"));
        Planned planned = new Planner(narrow, DemoKit.soundRack()).plan(shaft, 1);
        assertThat(planned).isInstanceOf(Planned.Ready.class);
        Method method = ((Planned.Ready) planned).method();
        assertThat(Replay.of(shaft, method, narrow).faults()).isEmpty();
        assertThat(DemoMethods.setUpsWith(method, Cut.ThreadInside.class))
                .allSatisfy(setUp -> assertThat(setUp.holding())
                        .isInstanceOfSatisfying(
                                Holding.InChuck.class,
                                chuck -> assertThat(chuck.support()).isInstanceOf(Holding.Support.FixedSteady.class)));
    }

    /** Unsupported it would turn larger towards its end than the limits allow, though it is not too slender to be cut. */
    @Test
    void plan_slenderStemToFineLimits_isTurnedOnACentre() {
        String stem = "outside: [{round: 8 %s, name: stem, length: 38}, {round: 20, name: head, length: 8}]\n";
        assertThat(stemIsHeld(stem.formatted("h7"))).isInstanceOf(Holding.Support.Centre.class);
        assertThat(stemIsHeld(stem.formatted("h13"))).isInstanceOf(Holding.Support.None.class);
    }

    private static Holding.Support stemIsHeld(String outside) {
        Method method = plan(part(outside), 1);
        SetUp turned = method.setUps().stream()
                .filter(setUp -> setUp.operations().stream()
                        .anyMatch(operation -> operation.cut() instanceof Cut.TurnDiameter turn
                                && turn.diameter().mm() < 9))
                .findFirst()
                .orElseThrow();
        return switch (turned.holding()) {
            case Holding.InChuck chuck -> chuck.support();
            case Holding.InCollet collet -> collet.support();
            default -> throw new AssertionError(turned.holding());
        };
    }
}
