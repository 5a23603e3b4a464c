package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Holding.Face;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.replay.Fault.Code;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A plate too wide for any vice here is clamped on the table: planned so, and every way of clamping it wrong is found. */
final class ClampedPlateTest {
    private static final Kit KIT = DemoKit.kit();
    private static final Part PLATE = SmallWork.read("""
            part: Valve plate
            unit: mm
            material: EN3
            general: ISO 2768-m
            block: {length: 180, width: 140, thickness: 12}
            holes:
              - {drill: 10, x: 20, y: 20}
              - {ream: 12, x: 160, y: 120}
            """);
    private static final Rack RACK = ((RackRead.Sound) RackFile.read("""
            rack: one piece
            unit: mm
            pieces:
              - {name: Z1, place: rack, material: EN3, sure: marked, flat: {width: 150, thickness: 12}, length: 1 m, condition: bright, price: 1}
            """)).rack();

    private static Method method() {
        return ((Planned.Ready) new Planner(KIT, RACK).plan(PLATE, 1)).method();
    }

    private static SetUp lastWith(Method method, Class<? extends Cut> cut) {
        return method.setUps().stream()
                .filter(setUp -> setUp.operations().stream().anyMatch(operation -> cut.isInstance(operation.cut())))
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    @Test
    void plan_widerThanAnyVice_isClampedOnTheTableForEdgesAndHoles() {
        Method method = method();
        assertThat(Replay.of(PLATE, method, KIT).faults()).isEmpty();
        assertThat(method.setUps().subList(1, method.setUps().size()))
                .allSatisfy(setUp -> assertThat(setUp.holding()).isInstanceOf(Holding.OnTable.class));
    }

    record Wrong(Code code, Class<? extends Cut> cut, Holding held) {}

    static Stream<Wrong> wrongs() {
        return Stream.of(
                new Wrong(Code.TOOL_FOULS, Cut.MillFace.class, new Holding.OnTable(Face.BOTTOM, List.of())),
                new Wrong(Code.TOOL_FOULS, Cut.MillFace.class, new Holding.OnTable(Face.BOTTOM, List.of(Face.RIGHT))),
                new Wrong(
                        Code.WRONG_SIDE,
                        Cut.MillFace.class,
                        new Holding.OnTable(Face.BOTTOM, List.of(Face.LEFT, Face.TOP))),
                new Wrong(Code.NO_HOLDER, Cut.MillFace.class, new Holding.OnTable(Face.RIGHT, List.of(Face.LEFT))),
                new Wrong(Code.NO_HOLDER, Cut.MillFace.class, new Holding.Clamped("clamps", Steps.mm(0), Steps.mm(9))),
                new Wrong(Code.WRONG_SIDE, Cut.DrillHole.class, new Holding.OnTable(Face.TOP, List.of())));
    }

    @ParameterizedTest
    @MethodSource("wrongs")
    void replay_clampedWrong_faultFound(Wrong wrong) {
        Method method = method();
        int number = lastWith(method, wrong.cut()).number();
        Proof proof = Replay.of(PLATE, Edits.in(method).holding(number, held -> wrong.held()), KIT);
        assertThat(proof.faults())
                .filteredOn(fault -> fault.setUp() == number)
                .extracting(Fault::code)
                .contains(wrong.code());
    }

    @Test
    void replay_clampsTooShort_faultFound() {
        Kit low = DemoKit.kitWith(text -> text.replace("clamps: 3\n", "clamps: 3/8\n"));
        assertThat(Replay.of(PLATE, method(), low).faults())
                .extracting(Fault::code)
                .contains(Code.NO_HOLDER);
    }

    @Test
    void plan_broadFaceToBeMilledToo_isRefusedAndSaysWhy() {
        Part thinner = SmallWork.read("""
                part: Thin plate
                unit: mm
                material: EN3
                general: ISO 2768-m
                block: {length: 180, width: 140, thickness: 10}
                """);
        assertThat(new Planner(KIT, RACK).plan(thinner, 1))
                .isInstanceOfSatisfying(
                        Planned.NotHere.class,
                        notHere -> assertThat(notHere.reasons())
                                .anySatisfy(reason -> assertThat(reason.say()).contains("but not its broad faces")));
    }
}
