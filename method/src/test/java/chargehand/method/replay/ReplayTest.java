package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Methods written by hand that make their parts. */
final class ReplayTest {
    @ParameterizedTest
    @EnumSource(SmallWork.class)
    void of_goodMethod_made(SmallWork work) {
        Proof proof = Replay.of(work.drawn(), work.method(), DemoKit.kit());
        assertThat(proof.faults()).isEmpty();
        assertThat(proof.made()).isTrue();
        assertThat(proof.worst()).isLessThanOrEqualTo(Deviation.ALLOWED);
    }
}
