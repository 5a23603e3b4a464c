package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Random sound parts, planned from a rack that has nearly everything: each method replays, or there are reasons. */
final class RandomProofTest {
    private static final int PARTS = 120;
    private static final Kit KIT = DemoKit.kit();

    @Test
    void of_randomParts_everyMethodMade() {
        var planner = new Planner(KIT, fullRack());
        var generator = new PartGenerator(20261105);
        int planned = 0;
        for (int i = 0; i < PARTS; i++) {
            Part part = generator.part();
            switch (planner.plan(part, 1 + i % 3)) {
                case Planned.Ready(Method method, long weighed, Bound bound) -> {
                    planned++;
                    assertThat(Replay.of(part, method, KIT).faults())
                            .as("part %d: %s", i, part.body())
                            .isEmpty();
                }
                case Planned.NotHere(List<Planned.Reason> reasons) ->
                    assertThat(reasons).isNotEmpty();
            }
        }
        assertThat(planned).as("parts planned of %d", PARTS).isGreaterThan(PARTS / 4);
    }

    /** Bright round and flat of every material that the parts ask for. */
    static Rack fullRack() {
        var yaml = new StringBuilder("rack: full\nunit: mm\npieces:\n");
        List<String> materials = List.of(
                "steel EN8", "mild steel EN3", "gunmetal LG2", "phosphor bronze PB1", "stainless 316", "brass CZ121");
        for (int material = 0; material < materials.size(); material++) {
            for (int round = 10; round <= 100; round += round < 40 ? 3 : 10) {
                yaml.append(String.format(
                        Locale.ROOT,
                        "  - {name: R%d-%d, place: rack, material: %s, sure: certified, round: %d, length: 2 m,"
                                + " condition: bright, price: 3}%n",
                        material,
                        round,
                        materials.get(material),
                        round));
            }
            for (int thick = 8; thick <= 48; thick += 8) {
                yaml.append(String.format(
                        Locale.ROOT,
                        "  - {name: F%d-%d, place: stand, material: %s, sure: certified, flat: {width: 110, thickness:"
                                + " %d}, length: 2 m, condition: bright, price: 3}%n",
                        material,
                        thick,
                        materials.get(material),
                        thick));
            }
        }
        return switch (RackFile.read(yaml.toString())) {
            case RackRead.Sound sound -> sound.rack();
            case RackRead.Refused refused -> throw new AssertionError(refused.faults());
        };
    }
}
