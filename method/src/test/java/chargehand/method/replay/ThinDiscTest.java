package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.part.End;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The method of a thin washer, broken in the holding of its second face. */
final class ThinDiscTest {
    private static final DemoMethods PACKER = DemoMethods.get("relief-packer");

    private static final int LAST = PACKER.method().setUps().size();

    @Test
    void of_stepTooShallow_gripTooShort() {
        Method broken = Edits.in(PACKER.method())
                .holding(
                        LAST,
                        holding -> Grips.changed(
                                holding,
                                grip -> new Holding.Grip(grip.to().minus(Length.mm(0.5)), grip.to(), grip.diameter())));
        assertThat(faults(broken)).contains(Fault.Code.GRIP_TOO_SHORT);
    }

    @Test
    void of_hardJawsOnSoLittle_gripTooShort() {
        Method broken = Edits.in(PACKER.method())
                .holding(LAST, holding -> ((Holding.InChuck) holding).with(new Holding.Bearing.Closing(true)));
        assertThat(faults(broken)).contains(Fault.Code.GRIP_TOO_SHORT);
    }

    @Test
    void of_drilledInTheStep_wrongSide() {
        End free = ((Holding.InChuck) PACKER.method().setUps().getLast().holding())
                .headstock()
                .other();
        Method broken = Edits.in(PACKER.method())
                .cut(
                        LAST,
                        2,
                        cut -> new Cut.DrillAxial(free, Length.mm(20.5), free == End.A ? Length.mm(2) : Length.ZERO));
        assertThat(faults(broken)).contains(Fault.Code.WRONG_SIDE);
    }

    private static Stream<Fault.Code> faults(Method method) {
        return Replay.of(PACKER.part(), method, DemoKit.kit()).faults().stream().map(Fault::code);
    }
}
