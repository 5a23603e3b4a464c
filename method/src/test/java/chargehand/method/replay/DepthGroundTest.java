package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import org.junit.jupiter.api.Test;

/** A keyway's depth is counted from the finished outside: milled in the bar and then turned over, it is too shallow. */
final class DepthGroundTest {
    @Test
    void of_keywayMilledBeforeTurning_faultFound() {
        Method method = SmallWork.SPINDLE.method();
        Method early = Edits.in(method).setUps(setUps -> {
            setUps.add(1, setUps.removeLast());
            return setUps;
        });
        assertThat(Replay.of(SmallWork.SPINDLE.drawn(), early, DemoKit.kit()).faults())
                .anySatisfy(fault -> {
                    assertThat(fault.code()).isEqualTo(Fault.Code.WRONG_BLANK);
                    assertThat(fault.setUp()).isEqualTo(2);
                });
    }
}
