package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo parts, planned for the demo shop, and their methods carried out again. */
final class DemoProofTest {
    private static final Kit KIT = DemoKit.kit();

    static List<DemoMethods> demos() {
        return DemoMethods.ALL;
    }

    @ParameterizedTest
    @MethodSource("demos")
    void of_demoPart_made(DemoMethods demo) {
        Proof proof = Replay.of(demo.part(), demo.method(), KIT);
        assertThat(proof.faults()).isEmpty();
        assertThat(proof.made()).isTrue();
        assertThat(proof.worst()).isLessThanOrEqualTo(Deviation.ALLOWED);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void of_demoPart_eachStepGoesOnFromTheOneBefore(DemoMethods demo) {
        Proof proof = Replay.of(demo.part(), demo.method(), KIT);
        List<Work> befores = works(proof).skip(2).toList();
        List<Work> afters = works(proof).skip(1).toList();
        assertThat(proof.stages()).hasSameSizeAs(demo.method().setUps());
        for (int i = 0; i + 1 < befores.size(); i += 2) {
            assertThat(befores.get(i)).isEqualTo(afters.get(i));
        }
    }

    /** Before and after of every step, in order. */
    private static Stream<Work> works(Proof proof) {
        return proof.stages().stream()
                .flatMap(stage -> stage.steps().stream())
                .flatMap(step -> Stream.of(step.before(), step.after()));
    }
}
