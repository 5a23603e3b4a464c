package chargehand.method.start;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.search.Planner;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What common practice in a machine shop looks at before switching on, as rules on the methods of the demo parts. */
class BeforeStartTest {
    private static final Kit KIT = DemoKit.kit();
    private static final Map<String, Integer> PARTS =
            Map.of("union", 2, "gland-stud", 24, "sluice-spindle", 1, "ram", 1, "shim", 40, "bearing-bush", 1);
    private static final List<Method> METHODS = PARTS.entrySet().stream()
            .map(part -> planned(part.getKey(), part.getValue()))
            .toList();

    private static Method planned(String name, int count) {
        var part = ((PartReading.Read) PartFile.read(DemoKit.part(name))).part();
        return ((Planned.Ready) new Planner(KIT, DemoKit.soundRack()).plan(part, count)).method();
    }

    /** A set-up and the method it stands in, short to print when a rule fails. */
    private record Placed(Method method, SetUp setUp) {
        List<String> checks() {
            return BeforeStart.of(method, setUp, KIT);
        }

        @Override
        public String toString() {
            return method.title() + ", set-up " + setUp.number() + ": " + checks();
        }
    }

    private static List<Placed> where(Predicate<SetUp> rule) {
        return METHODS.stream()
                .flatMap(method -> method.setUps().stream().map(setUp -> new Placed(method, setUp)))
                .filter(placed -> rule.test(placed.setUp()))
                .toList();
    }

    @Test
    void of_everySetUp_namesGuardAndTightWork() {
        assertThat(where(setUp -> true))
                .allSatisfy(placed -> assertThat(String.join(" ", placed.checks()))
                        .containsIgnoringCase("tight")
                        .containsIgnoringCase("guard"));
    }

    @Test
    void of_anyChuck_keyOutComesFirst() {
        assertThat(where(setUp -> setUp.holding() instanceof Holding.InChuck))
                .isNotEmpty()
                .allSatisfy(placed -> assertThat(placed.checks().getFirst()).startsWith("Chuck key out"));
    }

    @Test
    void of_lathe_saysTheFirstSpeedAndATurnByHand() {
        assertThat(where(setUp -> setUp.machine().endsWith("lathe")))
                .isNotEmpty()
                .allSatisfy(placed -> {
                    double rpm = placed.setUp().operations().stream()
                            .flatMap(operation -> operation.settings().speed().stream())
                            .findFirst()
                            .orElseThrow()
                            .rpm();
                    assertThat(String.join(" ", placed.checks()))
                            .contains("by hand one full turn")
                            .contains(": " + Math.round(rpm) + " rpm");
                });
    }

    @Test
    void of_centreAtTheOuterEnd_isGreasedAndLocked() {
        assertThat(where(setUp -> setUp.holding() instanceof Holding.InChuck chuck
                        && chuck.support() instanceof Holding.Support.Centre))
                .isNotEmpty()
                .allSatisfy(
                        placed -> assertThat(placed.checks()).anyMatch(check -> check.startsWith("Centre greased")));
    }

    @Test
    void of_workStillOnTheBar_barBehindTheSpindleIsSeenTo() {
        Method stud = planned("gland-stud", 24);
        List<Boolean> said = stud.setUps().stream()
                .map(setUp -> String.join(" ", BeforeStart.of(stud, setUp, KIT)).contains("behind the spindle"))
                .toList();
        assertThat(said).startsWith(true).endsWith(false);
    }

    @Test
    void of_noSuchMachine_holdingAlone() {
        Method method = METHODS.getFirst();
        SetUp setUp = method.setUps().getFirst();
        assertThat(BeforeStart.of(method, setUp, new Kit(List.of(), KIT.tooling())))
                .isEqualTo(HeldFast.of(setUp.holding()));
    }

    private static List<Operation> operations(Predicate<Operation> rule) {
        return where(setUp -> true).stream()
                .flatMap(placed -> placed.setUp().operations().stream())
                .filter(rule)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"ThreadOutside", "PartOff", "MillFlats", "DrillAcross"})
    void stopFirst_whatCannotBeTakenBack_isLookedAtFirst(String kind) {
        assertThat(operations(
                        operation -> operation.cut().getClass().getSimpleName().equals(kind)))
                .isNotEmpty()
                .extracting(StopFirst::of)
                .doesNotContain(List.of());
    }

    @Test
    void stopFirst_leftHandTrapezoid_saysItsLeadAndWayOfTheTool() {
        assertThat(operations(operation -> operation.cut() instanceof Cut.ThreadOutside thread
                        && thread.thread().leftHand()))
                .singleElement()
                .extracting(operation -> StopFirst.of(operation).getFirst())
                .asString()
                .contains("6 mm from turn to turn, the tool running to the tailstock");
    }

    @Test
    void stopFirst_passedSizeInPasses_isMeasuredBeforeTheLast() {
        assertThat(operations(operation ->
                        operation.hold() && operation.settings().passes().size() > 1))
                .isNotEmpty()
                .extracting(StopFirst::of)
                .allSatisfy(stops -> assertThat(stops).anyMatch(stop -> stop.startsWith("Before the last pass")));
    }
}
