package chargehand.method.proved;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Holding;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.replay.Replay;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import org.junit.jupiter.api.Test;

/** A shop without soft jaws or stub mandrels holds a thin ring in a split bush, whose own making is planned. */
final class SplitBushTest {
    private static final Part RING = ((PartReading.Read) PartFile.read("""
            part: Thin ring
            unit: mm
            material: EN8
            general: ISO 2768-m
            outside: [{round: 42 h7, name: rim, length: 20}]
            inside: [{bore: 38 H7, name: bore}]
            """)).part();

    private static Kit bareKit() {
        return DemoKit.kitWith(text -> text.lines()
                .filter(line -> !line.contains("soft-jaws:") && !line.contains("kind: stub"))
                .reduce("", (one, other) -> one + other + "\n"));
    }

    private static Rack rack(String... pieces) {
        String text = "rack: a few pieces\nunit: mm\npieces:\n" + String.join("\n", pieces) + "\n";
        return ((RackRead.Sound) RackFile.read(text)).rack();
    }

    private static String bar(String name, int diameter) {
        return "  - {name: " + name + ", place: rack, material: steel EN8, sure: marked, round: " + diameter
                + ", length: 1 m, condition: black, price: 2}";
    }

    @Test
    void plan_thinRingWithoutSoftJaws_isHeldInASplitBushThatIsPlannedToo() {
        Kit kit = bareKit();
        var planner = new ProvedPlanner(kit, rack(bar("Z1", 46), bar("Z2", 60)));
        assertThat(planner.plan(RING, 1)).isInstanceOfSatisfying(ProvedPlanner.Outcome.Proved.class, proved -> {
            SetUp last = proved.method().setUps().getLast();
            assertThat(last.holding())
                    .isInstanceOfSatisfying(
                            Holding.InChuck.class,
                            chuck -> assertThat(chuck.bearing()).isInstanceOf(Holding.Bearing.SplitBush.class));
            assertThat(last.instructions())
                    .anySatisfy(say -> assertThat(say).startsWith("Make a split bush first"))
                    .anySatisfy(say -> assertThat(say).startsWith("The bush comes from Z2"));
            Aid aid = planner.aids(proved.method()).getFirst();
            assertThat(Replay.of(aid.part(), aid.made().orElseThrow().method(), kit)
                            .made())
                    .isTrue();
        });
    }

    @Test
    void plan_nothingOnTheRackForTheBush_refusedAndSaidSo() {
        var planner = new ProvedPlanner(bareKit(), rack(bar("Z1", 46)));
        assertThat(planner.plan(RING, 1))
                .isInstanceOfSatisfying(
                        ProvedPlanner.Outcome.NotHere.class,
                        notHere -> assertThat(notHere.reasons())
                                .anySatisfy(reason -> assertThat(reason.say()).contains("split bush")));
    }
}
