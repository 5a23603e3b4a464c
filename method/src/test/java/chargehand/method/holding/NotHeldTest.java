package chargehand.method.holding;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Blank;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.method.wish.HolderName;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** The rule that is named is the one that forbids it. */
final class NotHeldTest {
    private static final Kit KIT = DemoKit.kit();
    private static final Machine LATHE = KIT.find("large lathe").orElseThrow();

    private static Standing ring(Predicate<Task> done) {
        var read = (PartReading.Read) PartFile.read("""
                part: Ring
                unit: mm
                material: EN8
                general: ISO 2768-m
                outside: [{round: 42, length: 20}]
                inside: [{bore: 38, name: bore}]
                """);
        var tasks = Tasks.of((Body.Turned) read.part().body(), false);
        var given = new BitSet();
        for (int i = 0; i < tasks.size(); i++) {
            given.set(i, done.test(tasks.get(i)));
        }
        var blank = new Blank.RoundBar(Length.mm(-1.5), Length.mm(21.5), Length.mm(45), false);
        return Standing.raw(tasks, new Standing.Raw(blank, Optional.empty(), false), given);
    }

    @Test
    void why_thinWall_namesTheWall() {
        assertThat(NotHeld.why(LATHE, "200 three-jaw", ring(task -> true))).contains("wall", "out of round");
    }

    @Test
    void why_faceplate_saysWhatItWants() {
        assertThat(NotHeld.why(LATHE, HolderName.FACEPLATE, ring(task -> false)))
                .isEqualTo("No end is faced yet that could lie flat on it.");
        assertThat(NotHeld.why(LATHE, HolderName.FACEPLATE, ring(task -> task instanceof Task.FaceOf)))
                .contains("neither ledge nor rim");
    }

    @Test
    void why_mandrelBeforeTheBore_namesTheBore() {
        assertThat(NotHeld.why(LATHE, "25 mm mandrel", ring(task -> false)))
                .contains("no finished bored or reamed hole");
    }

    @Test
    void why_turnedWorkOnATable_saysVees() {
        assertThat(NotHeld.why(KIT.mills().getFirst(), HolderName.CLAMPS, ring(task -> true)))
                .contains("round work lies in vees");
    }
}
