package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Settings;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The old pinion's method, broken on purpose at its keyway and at its holding. */
final class SlotTest {
    private static final DemoMethods PINION = DemoMethods.get("pinion");
    private static final List<Operation> OPERATIONS =
            PINION.method().setUps().getFirst().operations();
    private static final int BORE = 1;
    private static final int SLOT = OPERATIONS.stream()
            .filter(operation -> operation.cut() instanceof Cut.SlotInBore)
            .findFirst()
            .orElseThrow()
            .number();

    @Test
    void of_keywayLeftOut_notAsDrawn() {
        assertThat(faults(edits().without(1, SLOT))).contains(Fault.Code.NOT_AS_DRAWN);
    }

    @Test
    void of_keywayBeforeTheBore_wrongHole() {
        assertThat(faults(edits().moved(1, SLOT, BORE))).contains(Fault.Code.WRONG_HOLE);
    }

    @Test
    void of_keywayTwice_madeTwice() {
        assertThat(faults(edits().twice(1, SLOT))).contains(Fault.Code.MADE_TWICE);
    }

    @Test
    void of_keywayTooDeep_notAsDrawn() {
        assertThat(faults(slot(slot -> with(slot, slot.depth().plus(Length.mm(0.1)), slot.around()))))
                .contains(Fault.Code.NOT_AS_DRAWN);
    }

    @Test
    void of_keywayAslant_notAsDrawn() {
        assertThat(faults(slot(slot -> with(slot, slot.depth(), Angle.degrees(10)))))
                .contains(Fault.Code.NOT_AS_DRAWN);
    }

    @Test
    void of_keywayThroughTheBoss_wallTooThin() {
        assertThat(faults(slot(slot -> with(slot, Length.mm(14), slot.around()))))
                .contains(Fault.Code.WALL_TOO_THIN);
    }

    @Test
    void of_keywayStoppedInTheBore_nowhereToRunOut() {
        assertThat(faults(slot(slot -> new Cut.SlotInBore(
                        slot.end(),
                        slot.from(),
                        slot.to().minus(Length.mm(10)),
                        slot.bore(),
                        slot.width(),
                        slot.depth(),
                        slot.around(),
                        slot.form()))))
                .contains(Fault.Code.WRONG_HOLE);
    }

    /** The whole of the depth on the dial from where the corners touch would leave the keyway shallow by their height. */
    @Test
    void of_dialCountedFromTheTopOfTheBore_wrongDial() {
        Length depth = ((Cut.SlotInBore) OPERATIONS.get(SLOT - 1).cut()).depth();
        Length bottom = OPERATIONS.get(SLOT - 1).settings().passes().getLast().leaves();
        assertThat(faults(edits().settings(1, SLOT, set -> settings(set, set.speed(), depth.times(2), bottom))))
                .contains(Fault.Code.WRONG_DIAL);
    }

    @Test
    void of_spindleTurningUnderTheBit_wrongSpeed() {
        Settings.Pass pass = OPERATIONS.get(SLOT - 1).settings().passes().getLast();
        Optional<SpindleSpeed> speed = OPERATIONS.get(BORE - 1).settings().speed();
        assertThat(speed).isPresent();
        assertThat(faults(edits().settings(1, SLOT, set -> settings(set, speed, pass.dial(), pass.leaves()))))
                .contains(Fault.Code.WRONG_SPEED);
    }

    @Test
    void of_threeJawOnSeventeenTeeth_noHolder() {
        Method broken = edits().holding(1, holding -> {
            var held = (Holding.InChuck) holding;
            return new Holding.InChuck(
                    "200 three-jaw",
                    3,
                    held.bearing(),
                    new Holding.Grip(
                            held.grip().to().minus(Length.mm(38)),
                            held.grip().to(),
                            held.grip().diameter()),
                    held.headstock(),
                    held.support(),
                    Length.mm(0.12));
        });
        assertThat(faults(broken)).contains(Fault.Code.NO_HOLDER, Fault.Code.NOT_TRUE);
    }

    private static Edits edits() {
        return Edits.in(PINION.method());
    }

    private static Method slot(UnaryOperator<Cut.SlotInBore> change) {
        return edits().cut(1, SLOT, cut -> change.apply((Cut.SlotInBore) cut));
    }

    private static Cut.SlotInBore with(Cut.SlotInBore slot, Length depth, Angle around) {
        return new Cut.SlotInBore(
                slot.end(), slot.from(), slot.to(), slot.bore(), slot.width(), depth, around, slot.form());
    }

    private static Settings settings(Settings old, Optional<SpindleSpeed> speed, Length dial, Length leaves) {
        return new Settings(
                old.tool(),
                speed,
                old.feed(),
                List.of(new Settings.Pass(1, dial, leaves)),
                old.gearing(),
                old.indexing(),
                old.topSlide(),
                old.unit(),
                old.coolant());
    }

    private static Stream<Fault.Code> faults(Method method) {
        return Replay.of(PINION.part(), method, DemoKit.kit()).faults().stream().map(Fault::code);
    }
}
