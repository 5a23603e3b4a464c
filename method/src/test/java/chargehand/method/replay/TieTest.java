package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.replay.Fault.Code;
import chargehand.part.End;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Surfaces tied to each other, made in one holding or in two: the stud's second end is made held by its shank. */
final class TieTest {
    private static final Kit KIT = DemoKit.kit();

    private static List<Fault> faults(String tie, Method method) {
        return Replay.of(SmallWork.STUD.drawn("ties:\n- " + tie + "\n"), method, KIT)
                .faults();
    }

    @Test
    void tie_bothInOneHolding_true() {
        assertThat(faults("{run-out: 0.005, of: section 1, to: section 3}", SmallWork.STUD.method()))
                .isEmpty();
    }

    @Test
    void tie_heldByTheOther_trueWithinTheChucksRunOut() {
        Method method = SmallWork.STUD.method();
        assertThat(faults("{run-out: 0.12, of: section 4, to: section 3}", method))
                .isEmpty();
        assertThat(faults("{run-out: 0.05, of: section 4, to: section 3}", method))
                .extracting(Fault::code, Fault::setUp)
                .containsExactly(tuple(Code.NOT_TRUE, 3));
    }

    @Test
    void tie_heldByWhatWasMadeWithTheOther_true() {
        assertThat(faults("{run-out: 0.12, of: section 4, to: section 1}", SmallWork.STUD.method()))
                .isEmpty();
    }

    @Test
    void tie_dialledInIndependentJaws_true() {
        Holding dialled = new Holding.InChuck(
                "315 four-jaw",
                4,
                new Holding.Bearing.Closing(true),
                new Holding.Grip(mm(36), mm(52), mm(24)),
                End.A,
                new Holding.Support.None(),
                mm(0.02));
        Method method = Edits.in(SmallWork.STUD.method()).holding(3, held -> dialled);
        assertThat(faults("{run-out: 0.02, of: section 4, to: section 3}", method))
                .isEmpty();
    }
}
