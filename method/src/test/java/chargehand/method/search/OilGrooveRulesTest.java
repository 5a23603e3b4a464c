package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Replay;
import chargehand.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a turner insists on for a bush with an oil groove along its bore and one all round. All common practice. */
class OilGrooveRulesTest {
    private static final String BUSH = """
            part: Bush with oil grooves
            material: phosphor bronze PB1
            unit: mm
            general: ISO 2768-m
            outside:
              - {round: 48 p6, name: outside, length: 40}
            inside:
              - {bore: 30 H7, name: bore}
            in-bores:
              - {oil-groove: %s, name: oil groove, in: bore, depth: 1.5, at: 6, length: 28}
              - {recess: 33, name: oil ring, in: bore, at: 18, width: 4}
            """;

    @Test
    void plan_bushWithOilGrooves_isProvedWithTheRingBeforeTheGroove() {
        Part part = DemoMethods.read(BUSH.formatted("4"));
        Method method = ((Planned.Ready) DemoMethods.plan(part, 1)).method();
        SetUp setUp = DemoMethods.setUpsWith(method, Cut.SlotInBore.class).getFirst();
        List<Cut> cuts = setUp.operations().stream().map(Operation::cut).toList();
        assertThat(cuts.stream().filter(cut -> cut instanceof Cut.RecessInBore || cut instanceof Cut.SlotInBore))
                .hasExactlyElementsOfTypes(Cut.RecessInBore.class, Cut.SlotInBore.class);
        assertThat(DemoMethods.setUpsWith(method, Cut.BoreTo.class)).contains(setUp);
        assertThat(Replay.of(part, method, DemoKit.kit()).faults()).isEmpty();
    }

    @Test
    void plan_grooveThatEndsInTheBore_isEasedInAndOut() {
        Method method = ((Planned.Ready) DemoMethods.plan(DemoMethods.read(BUSH.formatted("4")), 1)).method();
        assertThat(DemoMethods.operations(method))
                .filteredOn(operation -> operation.cut() instanceof Cut.SlotInBore)
                .singleElement()
                .satisfies(operation -> {
                    assertThat(operation.say()).contains("oil groove", "eased in and out");
                    assertThat(operation.settings().speed()).isEmpty();
                });
    }

    /** The bits of the demo kit are ground to half an inch at the most. */
    @Test
    void plan_grooveWiderThanAnyBit_saysWhatWouldUnlockIt() {
        Planned planned = DemoMethods.plan(DemoMethods.read(BUSH.formatted("14")), 1);
        assertThat(planned)
                .isInstanceOfSatisfying(
                        Planned.NotHere.class,
                        notHere -> assertThat(notHere.reasons()).singleElement().satisfies(reason -> {
                            assertThat(reason.code()).isEqualTo(Planned.Code.NO_TOOL);
                            assertThat(reason.say()).contains("oil groove");
                            assertThat(reason.unlock()).contains("slotting bar");
                        }));
    }
}
