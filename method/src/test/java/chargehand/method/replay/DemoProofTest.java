package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Planned;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo parts, planned for the demo shop, and their methods carried out again. */
final class DemoProofTest {
    private static Part part(String name) {
        PartReading reading = PartFile.read(DemoKit.part(name));
        assertThat(reading).isInstanceOf(PartReading.Read.class);
        return ((PartReading.Read) reading).part();
    }

    @ParameterizedTest
    @CsvSource({
        "union, 1",
        "gland-stud, 24",
        "bearing-bush, 1",
        "ram, 1",
        "roller-pin, 4",
        "shim, 40",
        "sluice-spindle, 1",
        "metric-stud, 1",
    })
    void of_demoPart_made(String name, int count) {
        Part part = part(name);
        Planned planned = new Planner(DemoKit.kit(), DemoKit.soundRack()).plan(part, count);
        assertThat(planned).isInstanceOf(Planned.Ready.class);
        Proof proof = Replay.of(part, ((Planned.Ready) planned).method(), DemoKit.kit());
        assertThat(proof.faults()).isEmpty();
        assertThat(proof.made()).isTrue();
        assertThat(proof.worst()).isLessThanOrEqualTo(Deviation.ALLOWED);
    }
}
