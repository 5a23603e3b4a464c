package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.method.aim.Aim;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Method;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the stock held less what came off, against the volume of the part added up another way. */
final class VolumeTest {
    /** Arcs are chords within a fifth of a micrometre: over a radius of two millimetres round 40 mm that is less. */
    private static final double NEAR_MM3 = 0.06;

    private static final Kit KIT = DemoKit.kit();

    /**
     * All but a few: the shaft and the pinion, which are their own stock, the roller pin, whose tapping hole may be drilled deeper than drawn, and the bush, whose far cone ends
     * within the bore as it is aimed at, where this sum has no station.
     */
    static List<DemoMethods> demos() {
        return DemoMethods.ALL.stream()
                .filter(demo -> !Set.of("roller-pin", "bearing-bush", "capstan-shaft", "pinion")
                        .contains(demo.name()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void removed_demoPart_isStockLessPart(DemoMethods demo) {
        isStockLessPart(demo.part(), demo.method());
    }

    @ParameterizedTest
    @EnumSource(SmallWork.class)
    void removed_writtenMethod_isStockLessPart(SmallWork work) {
        isStockLessPart(work.drawn(), work.method());
    }

    private static void isStockLessPart(Part part, Method method) {
        double left = VolumeSum.of(method.stock().blank()) - removed(Replay.of(part, method, KIT));
        double asked = switch (Aim.at(part).body()) {
            case Body.Turned turned -> VolumeSum.of(turned);
            case Body.Block block -> VolumeSum.of(block);
        };
        assertThat(left).isCloseTo(asked, within(NEAR_MM3));
    }

    private static double removed(Proof proof) {
        return proof.stages().stream()
                .flatMap(stage -> stage.steps().stream())
                .mapToDouble(step -> step.removed().cubicMm())
                .sum();
    }

    /** Cylinders turned down, a drilled hole with its point, a chamfer's ring, a flat's segments. */
    @Test
    void removed_singleCuts_byTheirOwnFormulas() {
        Proof pin = Replay.of(SmallWork.PIN.drawn(), SmallWork.PIN.method(), KIT);
        Proof bush = Replay.of(SmallWork.BUSH.drawn(), SmallWork.BUSH.method(), KIT);
        Proof spindle = Replay.of(SmallWork.SPINDLE.drawn(), SmallWork.SPINDLE.method(), KIT);
        assertThat(removed(pin, 1, 1)).isCloseTo(Math.PI / 4 * 20 * 20 * 1, within(1e-6));
        assertThat(removed(pin, 1, 2)).isCloseTo(Math.PI / 4 * (20 * 20 - 18 * 18) * 54, within(1e-6));
        double ring = Math.PI * 6 * 6 * 1 - Math.PI / 3 * (6 * 6 + 6 * 5 + 5 * 5);
        assertThat(removed(pin, 1, 4)).isCloseTo(ring, within(1e-6));
        assertThat(removed(bush, 2, 3)).isCloseTo(Math.PI / 4 * 10 * 10 * 51, within(1e-6));
        assertThat(removed(bush, 2, 5)).isCloseTo(Math.PI / 4 * (20 * 20 - 19.5 * 19.5) * 51, within(1e-6));
        double half = Math.acos(7.5 / 10);
        double segment = 100 * half - 7.5 * Math.sqrt(100 - 7.5 * 7.5);
        assertThat(removed(spindle, 3, 1)).isCloseTo(4 * segment * 16, within(1e-3));
    }

    private static double removed(Proof proof, int setUp, int operation) {
        return proof.stages()
                .get(setUp - 1)
                .steps()
                .get(operation - 1)
                .removed()
                .cubicMm();
    }

    /** 118° points: the tip of a 10 mm drill is 5 / tan 59° deep. */
    @Test
    void removed_blindHole_hasADrillsPoint() {
        Part part = SmallWork.read("""
                part: Plug
                unit: mm
                material: EN8
                general: ISO 2768-m
                outside: [{round: 30, length: 40}]
                inside: [{drill: 10, from: A, depth: 20}]
                """);
        Method method = SmallWork.methodOf(
                new Blank.RoundBar(Steps.mm(-1), Steps.mm(80), Steps.mm(30), true),
                Steps.setUp(
                        1,
                        Steps.LATHE,
                        Steps.chuck(45, 80, 30, End.B),
                        Steps.face(End.A, 0),
                        Steps.centre(End.A, 5, "BS 4"),
                        Steps.drill(End.A, 10, 20),
                        Steps.deburr(),
                        Steps.part(41, 44, End.A)),
                Steps.setUp(2, Steps.LATHE, Steps.packed(0, 36, 30, End.A), Steps.face(End.B, 40), Steps.deburr()));
        Proof proof = Replay.of(part, method, KIT);
        assertThat(proof.faults()).isEmpty();
        double point = Math.PI / 3 * 25 * 5 / Math.tan(Math.toRadians(59));
        assertThat(removed(proof, 1, 3)).isCloseTo(Math.PI * 25 * 20 + point, within(1e-3));
    }
}
