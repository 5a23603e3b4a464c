package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.part.End;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Methods for parts that come back, broken on purpose: what stays must stay, and what was there must be what the drawing says. */
final class OldPartTest {
    private static final DemoMethods SHAFT = DemoMethods.get("capstan-shaft");

    @Test
    void of_oldPart_beginsFromWhatCame() {
        Proof proof = Replay.of(SHAFT.part(), SHAFT.method(), DemoKit.kit());
        var before = (TurnedWork) proof.stages().getFirst().before();
        assertThat(before.largest(new Span(Length.mm(100), Length.mm(200)))).isEqualTo(Length.mm(74.62));
        assertThat(before.features().keyways()).hasSize(1);
        assertThat(before.features().centres()).hasSize(2);
        assertThat(before.onBar()).isFalse();
    }

    @Test
    void of_barInsteadOfTheOldPart_notAsDrawn() {
        var bar = new Blank.RoundBar(Length.mm(-2), Length.mm(877), Length.mm(90), false);
        assertThat(faults(Edits.in(SHAFT.method()).blank(bar))).contains(Fault.Code.NOT_AS_DRAWN);
    }

    @Test
    void of_anotherOldPart_stockTooSmall() {
        var other = new Blank.OldPart(Length.mm(870), Length.mm(85));
        assertThat(faults(Edits.in(SHAFT.method()).blank(other))).contains(Fault.Code.STOCK_TOO_SMALL);
    }

    @Test
    void of_surfaceThatStaysIsSkimmed_belowFinish() {
        Method broken = Edits.in(SHAFT.method())
                .cut(1, 1, cut -> new Cut.TurnDiameter(Length.mm(300), Length.mm(400), Length.mm(84.9)));
        assertThat(faults(broken)).contains(Fault.Code.BELOW_FINISH);
    }

    @Test
    void of_cutRunsOnIntoTheSeatThatStays_belowFinish() {
        Method broken = Edits.in(SHAFT.method()).cut(1, 1, cut -> {
            var turn = (Cut.TurnDiameter) cut;
            return new Cut.TurnDiameter(turn.from(), turn.to().plus(Length.mm(2)), Length.mm(59));
        });
        assertThat(faults(broken)).contains(Fault.Code.BELOW_FINISH);
    }

    @Test
    void of_journalLeftOut_notToSize() {
        assertThat(faults(Edits.in(SHAFT.method()).without(1, 2))).contains(Fault.Code.NOT_TO_SIZE);
    }

    @Test
    void of_endFacedThatStays_faulty() {
        Method broken = Edits.in(SHAFT.method())
                .operations(1, operations -> withFirst(operations, new Cut.FaceEnd(End.A, Length.mm(0.5))));
        assertThat(faults(broken)).contains(Fault.Code.BELOW_FINISH, Fault.Code.WRONG_SIDE);
    }

    @Test
    void of_oldPartSawnFirst_faulty() {
        SetUp sawing = SmallWork.PIN.method().setUps().getFirst();
        Method broken = Edits.in(SHAFT.method())
                .setUps(setUps ->
                        Stream.concat(Stream.of(sawing), setUps.stream()).toList());
        assertThat(faults(broken)).isNotEmpty();
    }

    private static List<Operation> withFirst(List<Operation> operations, Cut cut) {
        operations.addFirst(Steps.with(operations.getFirst(), cut));
        return operations;
    }

    private static Stream<Fault.Code> faults(Method method) {
        return Replay.of(SHAFT.part(), method, DemoKit.kit()).faults().stream().map(Fault::code);
    }
}
