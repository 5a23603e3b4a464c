package chargehand.method.replay;

import static chargehand.method.replay.Steps.chuck;
import static chargehand.method.replay.Steps.mm;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Angle;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import chargehand.method.replay.Fault.Code;
import chargehand.part.End;
import java.util.EnumSet;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A good method with one thing wrong: the fault is found, by its code, at its place. */
final class FaultTest {
    private static final Kit KIT = DemoKit.kit();

    /**
     * One thing wrong.
     *
     * @param place set-up and operation, such as "1.3"; 0 for the whole
     */
    record Wrong(Code code, String place, String what, SmallWork work, Method method) {
        @Override
        public String toString() {
            return code + ": " + what;
        }
    }

    @ParameterizedTest
    @MethodSource({"holding", "bearing", "seat", "plate", "bushed", "elsewhere", "cutting", "inside", "setting", "whole"
    })
    void of_oneThingWrong_faultFound(Wrong wrong) {
        Proof proof = Replay.of(wrong.work().drawn(), wrong.method(), KIT);
        assertThat(proof.made()).isFalse();
        assertThat(proof.faults())
                .extracting(fault -> fault.code() + " at " + fault.setUp() + "." + fault.operation())
                .contains(wrong.code() + " at " + wrong.place());
        assertThat(proof.faults()).allSatisfy(fault -> assertThat(fault.say()).matches("[\\p{Lu}'0-9].*\\."));
    }

    @Test
    void codes_allOfThem_areTried() {
        var tried = Stream.of(
                        holding(),
                        bearing(),
                        seat(),
                        plate(),
                        bushed(),
                        elsewhere(),
                        cutting(),
                        inside(),
                        setting(),
                        whole())
                .flatMap(wrongs -> wrongs)
                .map(Wrong::code)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Code.class)));
        assertThat(tried).isEqualTo(EnumSet.allOf(Code.class));
    }

    private static Edits pin() {
        return Edits.in(SmallWork.PIN.method());
    }

    private static Edits bush() {
        return Edits.in(SmallWork.BUSH.method());
    }

    private static Edits stud() {
        return Edits.in(SmallWork.STUD.method());
    }

    private static Edits spindle() {
        return Edits.in(SmallWork.SPINDLE.method());
    }

    private static Wrong pin(Code code, String place, String what, Method method) {
        return new Wrong(code, place, what, SmallWork.PIN, method);
    }

    private static Wrong bush(Code code, String place, String what, Method method) {
        return new Wrong(code, place, what, SmallWork.BUSH, method);
    }

    private static Wrong stud(Code code, String place, String what, Method method) {
        return new Wrong(code, place, what, SmallWork.STUD, method);
    }

    private static Wrong spindle(Code code, String place, String what, Method method) {
        return new Wrong(code, place, what, SmallWork.SPINDLE, method);
    }

    private static Holding grip(double from, double to, double diameter, End headstock) {
        return chuck(from, to, diameter, headstock);
    }

    static Stream<Wrong> holding() {
        Holding named = new Holding.InChuck(
                "300 three-jaw",
                3,
                new Holding.Grip(mm(56), mm(94), mm(20)),
                End.B,
                new Holding.Support.None(),
                mm(0.1));
        Holding truer = new Holding.InChuck(
                Steps.CHUCK, 3, new Holding.Grip(mm(56), mm(94), mm(20)), End.B, new Holding.Support.None(), mm(0.01));
        var steady = new Holding.Support.FixedSteady(mm(30), mm(25));
        var centre = new Holding.Support.Centre();
        return Stream.of(
                pin(Code.NO_HOLDER, "1.0", "no such chuck", pin().holding(1, held -> named)),
                pin(Code.NOT_TRUE, "1.0", "truer than the chuck runs", pin().holding(1, held -> truer)),
                pin(Code.GRIP_ON_AIR, "2.0", "no such size there", pin().holding(2, held -> grip(25, 45, 12, End.A))),
                pin(Code.GRIP_TOO_SHORT, "2.0", "a grip of 3", pin().holding(2, held -> grip(0, 3, 12, End.A))),
                pin(Code.GRIP_TOO_LONG, "1.0", "a grip of 39.5", pin().holding(1, held -> grip(54.5, 94, 20, End.B))),
                pin(Code.BLOCKED_BEHIND, "2.0", "the head behind", pin().holding(2, held -> grip(2, 18, 12, End.B))),
                stud(Code.GRIP_SPOILS, "3.0", "by the thread", stud().holding(3, held -> grip(2, 28, 20, End.A))),
                pin(
                        Code.NO_CENTRE_HOLE,
                        "1.0",
                        "never centred",
                        pin().holding(1, held -> chuck(56, 94, 20, End.B, centre))),
                pin(
                        Code.NO_STEADY,
                        "1.0",
                        "a steady on nothing",
                        pin().holding(1, held -> chuck(56, 94, 20, End.B, steady))),
                pin(
                        Code.TOO_BIG,
                        "1.0",
                        "two metres out",
                        pin().blank(new Blank.RoundBar(mm(-2000), mm(94), mm(20), true))),
                pin(
                        Code.TOO_SLENDER,
                        "1.2",
                        "far out of the jaws",
                        Edits.in(pin().blank(new Blank.RoundBar(mm(-1), mm(194), mm(20), true)))
                                .holding(1, held -> grip(156, 194, 20, End.B))));
    }

    /** What is wrong with what bears on the work. */
    static Stream<Wrong> bearing() {
        return Stream.of(
                pin(Code.GRIP_MARKS, "2.0", "bare jaws", pin().holding(2, held -> chuck(0, 18, 12, End.A))),
                ring(Code.GRIP_NIPS, "2.0", "in hard jaws", held -> Steps.packed(0, 18, 42, End.A)),
                new Wrong(Code.GRIP_NIPS, "2.0", "bored thin in hard jaws", SmallWork.RING, boredThin()),
                ring(Code.GRIP_TOO_SHORT, "2.0", "a grip of 1.5", held -> Steps.soft(0, 1.5, 42, End.A)),
                ring(Code.GRIP_TOO_LONG, "2.0", "longer than soft jaws", held -> Steps.soft(-6, 20, 42, End.A)),
                ring(Code.GRIP_ON_AIR, "2.0", "bored to another size", held -> Steps.soft(0, 18, 43, End.A)),
                ring(Code.NO_HOLDER, "2.0", "larger than they are", held -> Steps.soft(0, 18, 142, End.A)),
                ring(Code.NOT_TRUE, "2.0", "truer than measured", FaultTest::tooTrue),
                ring(Code.NO_HOLDER, "2.0", "a bore too small for jaws", held -> Steps.opening(0, 18, 38, End.A)),
                sleeve(Code.GRIP_ON_AIR, "3.0", "no such bore", held -> Steps.opening(0, 20, 66, End.A)),
                sleeve(Code.GRIP_ON_AIR, "3.0", "beyond the bore", held -> Steps.opening(-15, 5, 70, End.A)),
                sleeve(Code.GRIP_TOO_SHORT, "3.0", "a grip of 8", held -> Steps.opening(0, 8, 70, End.A)),
                sleeve(Code.GRIP_TOO_LONG, "3.0", "a grip of 40", held -> Steps.opening(0, 40, 70, End.A)),
                sleeve(Code.GRIP_MARKS, "3.0", "bare jaws in the bore", FaultTest::bare),
                sleeve(Code.NOT_TRUE, "3.0", "truer than packed", FaultTest::tooTrue),
                sleeve(Code.WRONG_SIDE, "3.1", "the wrong way round", held -> Steps.opening(20, 40, 70, End.B)));
    }

    /** What is wrong with a mandrel, a disc in its seat or a fixed steady. */
    static Stream<Wrong> seat() {
        return Stream.of(
                disc(Code.GRIP_TOO_SHORT, 2, "hardly gripped", held -> grip(-1.5, 0.5, 60, End.A)),
                disc(Code.GRIP_TOO_SHORT, 2, "not seated", held -> grip(1.5, 6.5, 60, End.A)),
                disc(Code.NO_HOLDER, 3, "no such mandrel", held -> onStub("old mandrel", 25, 0.013)),
                disc(Code.NO_HOLDER, 3, "a long mandrel as a stub", held -> onStub("25 mm mandrel", 25, 0.013)),
                disc(Code.GRIP_ON_AIR, 3, "a bore of 24", held -> Steps.stub(0, 8, 24, End.B)),
                disc(Code.GRIP_ON_AIR, 3, "beyond the bore", held -> Steps.stub(4, 12, 25, End.B)),
                disc(Code.GRIP_TOO_SHORT, 3, "on 2 of 9", held -> Steps.stub(6, 8, 25, End.B)),
                disc(Code.NOT_TRUE, 3, "truer than measured", held -> onStub("slugs for stub mandrels", 25, 0.001)),
                shaft(Code.TOO_SLENDER, "2.1", "no steady", held -> Steps.packed(263, 301, 30, End.B)),
                shaft(Code.TOO_SLENDER, "2.1", "far from the steady", held -> Steps.steadied(263, 301, 30, End.B, 200)),
                shaft(Code.NO_STEADY, "2.0", "off the end", held -> Steps.steadied(263, 301, 30, End.B, 3)),
                shaft(Code.NO_STEADY, "2.0", "set to another size", held -> pads(held, 32)));
    }

    /** What is wrong with clamps on a faceplate. */
    static Stream<Wrong> plate() {
        return Stream.of(
                flange(Code.GRIP_TOO_SHORT, "no face there", Steps.faceplate(End.A, 12, 50)),
                flange(Code.GRIP_ON_AIR, "clamps through the boss", Steps.faceplate(End.A, 10, 40)),
                flange(Code.GRIP_ON_AIR, "the wrong way round", Steps.faceplate(End.B, 10, 50)),
                flange(Code.GRIP_ON_AIR, "a ledge taken for the rim", onPlate(true, 0.02)),
                flange(Code.GRIP_TOO_SHORT, "hardly lapping over", Steps.faceplate(End.A, 10, 80)),
                flange(Code.NOT_TRUE, "truer than anyone dials", onPlate(false, 0.005)),
                new Wrong(
                        Code.TOOL_FOULS,
                        "4.1",
                        "into the clamps",
                        SmallWork.FLANGE,
                        Edits.in(SmallWork.FLANGE.method()).operation(4, 1, op -> Steps.turn(10, 40, 50, 49))),
                new Wrong(
                        Code.GRIP_ON_AIR,
                        "2.0",
                        "not faced yet",
                        SmallWork.FLANGE,
                        Edits.in(SmallWork.FLANGE.method()).holding(2, held -> Steps.faceplate(End.A, 10, 50))));
    }

    /** What is wrong in other jaws than a lathe chuck's. */
    static Stream<Wrong> elsewhere() {
        return Stream.of(
                spindle(
                        Code.NOT_TRUE,
                        "3.0",
                        "truer than the head's chuck",
                        spindle().holding(3, FaultTest::trueHead)),
                ring(Code.NO_HOLDER, "2.0", "a collet it has not", held -> collet("large collets", 42)),
                spindle(
                        Code.NO_HOLDER,
                        "6.0",
                        "thicker than the vees",
                        spindle().holding(6, FaultTest::inSmallVees)));
    }

    private static Holding trueHead(Holding held) {
        var head = (Holding.InDividingHead) held;
        return new Holding.InDividingHead(head.head(), head.grip(), head.headstock(), head.support(), mm(0.02));
    }

    private static Holding collet(String set, double diameter) {
        return new Holding.InCollet(set, Steps.grip(0, 18, diameter), End.A, new Holding.Support.None(), mm(0.02));
    }

    private static Holding inSmallVees(Holding held) {
        var laid = (Holding.LaidAcross) held;
        return new Holding.LaidAcross("vee blocks", Steps.grip(16, 56, 130), laid.around());
    }

    private static Holding onPlate(boolean rim, double runOut) {
        return new Holding.OnFaceplate(End.A, mm(10), mm(50), rim, mm(runOut));
    }

    private static Wrong flange(Code code, String what, Holding held) {
        Method method = Edits.in(SmallWork.FLANGE.method()).holding(4, other -> held);
        return new Wrong(code, "4.0", what, SmallWork.FLANGE, method);
    }

    private static Holding onStub(String name, double bore, double runOut) {
        return new Holding.OnStub(name, mm(bore), mm(0), mm(8), End.B, mm(runOut));
    }

    private static Holding pads(Holding held, double diameter) {
        var chuck = (Holding.InChuck) held;
        return new Holding.InChuck(
                chuck.chuck(),
                chuck.jaws(),
                chuck.bearing(),
                chuck.grip(),
                chuck.headstock(),
                new Holding.Support.FixedSteady(mm(20), mm(diameter)),
                chuck.runOut());
    }

    private static Wrong disc(Code code, int setUp, String what, UnaryOperator<Holding> change) {
        Method method = Edits.in(SmallWork.DISC.method()).holding(setUp, change);
        return new Wrong(code, setUp + ".0", what, SmallWork.DISC, method);
    }

    private static Wrong shaft(Code code, String place, String what, UnaryOperator<Holding> change) {
        Method method = Edits.in(SmallWork.SHAFT.method()).holding(2, change);
        return new Wrong(code, place, what, SmallWork.SHAFT, method);
    }

    @Test
    void of_ringInASplitBush_made() {
        Holding bushed = Steps.bushed(Steps.grip(0, 18, 42), End.A, 53);
        Method method = Edits.in(SmallWork.RING.method()).holding(2, held -> bushed);
        assertThat(Replay.of(SmallWork.RING.drawn(), method, KIT).faults()).isEmpty();
    }

    /** What is wrong with a split bush. */
    static Stream<Wrong> bushed() {
        return Stream.of(
                ring(Code.NO_HOLDER, "2.0", "a bush like foil", held -> bush(0, 18, 42, 44)),
                ring(Code.NO_HOLDER, "2.0", "too thick to close", held -> bush(0, 18, 42, 80)),
                ring(Code.NO_HOLDER, "2.0", "larger than the jaws take", held -> bush(0, 18, 180, 200)),
                ring(Code.GRIP_ON_AIR, "2.0", "bored to another size", held -> bush(0, 18, 43, 54)),
                ring(Code.GRIP_ON_AIR, "2.0", "beyond the work", held -> bush(10, 28, 42, 53)),
                ring(Code.GRIP_TOO_SHORT, "2.0", "a grip of 1.5", held -> bush(0, 1.5, 42, 53)),
                ring(Code.NOT_TRUE, "2.0", "truer than a bush is", held -> tooTrue(bush(0, 18, 42, 53))));
    }

    private static Holding bush(double from, double to, double diameter, double outside) {
        return Steps.bushed(Steps.grip(from, to, diameter), End.A, outside);
    }

    /** The ring turned and parted solid but for a drilled hole, and bored in its second holding, in hard jaws. */
    private static Method boredThin() {
        Method drilled = Edits.in(SmallWork.RING.method()).without(1, 5);
        Method bored = Edits.in(drilled).operations(2, operations -> {
            operations.add(1, Steps.bore(End.B, 19.5, 38, 0));
            return operations;
        });
        return Edits.in(bored).holding(2, held -> Steps.packed(0, 18, 42, End.A));
    }

    private static Holding tooTrue(Holding held) {
        var chuck = (Holding.InChuck) held;
        return new Holding.InChuck(
                chuck.chuck(),
                chuck.jaws(),
                chuck.bearing(),
                chuck.grip(),
                chuck.headstock(),
                chuck.support(),
                mm(0.01));
    }

    private static Holding bare(Holding held) {
        return ((Holding.InChuck) held).with(new Holding.Bearing.Opening(false));
    }

    private static Wrong ring(Code code, String place, String what, UnaryOperator<Holding> change) {
        return new Wrong(
                code,
                place,
                what,
                SmallWork.RING,
                Edits.in(SmallWork.RING.method()).holding(2, change));
    }

    private static Wrong sleeve(Code code, String place, String what, UnaryOperator<Holding> change) {
        return new Wrong(
                code,
                place,
                what,
                SmallWork.SLEEVE,
                Edits.in(SmallWork.SLEEVE.method()).holding(3, change));
    }

    static Stream<Wrong> cutting() {
        return Stream.of(
                pin(Code.TOOL_FOULS, "1.2", "into the jaws", pin().operation(1, 2, op -> Steps.turn(0, 60, 20, 18))),
                pin(Code.WRONG_SIDE, "1.1", "the headstock's end", pin().operation(1, 1, op -> Steps.face(End.B, 50))),
                pin(
                        Code.BELOW_FINISH,
                        "1.3",
                        "half a millimetre small",
                        pin().operation(1, 3, op -> Steps.turn(0, 20, 18, 11.5))),
                pin(Code.NOTHING_TO_CUT, "1.4", "turned again", pin().twice(1, 3)),
                pin(
                        Code.NO_CORNER,
                        "1.4",
                        "no corner there",
                        pin().operation(1, 4, op -> Steps.chamfer(5, 12, End.B, 1))),
                pin(Code.WORK_LOOSE, "1.7", "after parting", pin().swapped(1, 6)),
                pin(Code.BURRS_LEFT, "2.0", "burrs left", pin().without(2, 2)),
                stud(Code.MADE_TWICE, "2.7", "threaded again", stud().twice(2, 6)),
                stud(Code.WRONG_BLANK, "2.5", "too thick for the thread", stud().without(2, 3)),
                stud(Code.SPOILS_THREAD, "2.6", "chamfered after threading", stud().swapped(2, 5)),
                stud(Code.DIE_BLOCKED, "3.4", "a centre in the way", stud().holding(3, FaultTest::centred)),
                spindle(
                        Code.WRONG_SIDE,
                        "5.1",
                        "not turned to the hole",
                        spindle().cut(5, 1, FaultTest::aside)),
                spindle(Code.WRONG_BLANK, "3.1", "round too small", spindle().cut(3, 1, FaultTest::largeFlats)));
    }

    private static Holding centred(Holding held) {
        return chuck(36, 52, 24, End.A, new Holding.Support.Centre());
    }

    private static Cut aside(Cut cut) {
        Cut.DrillAcross hole = (Cut.DrillAcross) cut;
        return new Cut.DrillAcross(hole.at(), hole.diameter(), Angle.degrees(30), hole.through(), hole.depth());
    }

    private static Cut largeFlats(Cut cut) {
        Cut.MillFlats flats = (Cut.MillFlats) cut;
        return new Cut.MillFlats(flats.sides(), mm(21), flats.from(), flats.to());
    }

    static Stream<Wrong> inside() {
        return Stream.of(
                bush(Code.NO_START, "2.2", "drilled without a centre", bush().without(2, 2)),
                bush(Code.WRONG_PASSES, "3.1", "the stub faced away", bush().without(2, 10)),
                bush(Code.NO_START, "2.1", "centred before facing", bush().swapped(2, 1)),
                bush(Code.WRONG_HOLE, "2.4", "reamed from 10", bush().without(2, 4)),
                bush(
                        Code.WRONG_HOLE,
                        "2.3",
                        "bored into the solid",
                        bush().operation(2, 3, op -> Steps.bore(End.B, 0, 8, 22))),
                bush(
                        Code.WALL_TOO_THIN,
                        "2.7",
                        "bored to 39",
                        bush().operation(2, 6, op -> Steps.bore(End.B, 20, 39, 22))),
                bush(
                        Code.BELOW_FINISH,
                        "2.6",
                        "bored too deep",
                        bush().operation(2, 6, op -> Steps.bore(End.B, 20, 26, 21))),
                bush(Code.MADE_TWICE, "2.3", "centred again", bush().twice(2, 2)));
    }

    static Stream<Wrong> setting() {
        return Stream.of(
                pin(Code.NO_TOOL, "1.2", "not owned", pin().settings(1, 2, set -> SettingsEdits.tool(set, "diamond"))),
                pin(
                        Code.NO_TOOL,
                        "1.7",
                        "a tool that does not part",
                        pin().settings(1, 7, set -> SettingsEdits.tool(set, "1/16 grooving tool"))),
                pin(
                        Code.WRONG_SPEED,
                        "1.2",
                        "a speed it lacks",
                        pin().settings(1, 2, set -> SettingsEdits.speed(set, 300))),
                pin(
                        Code.WRONG_FEED,
                        "1.2",
                        "a feed it lacks",
                        pin().settings(1, 2, set -> SettingsEdits.feed(set, 0.3))),
                pin(Code.WRONG_DIAL, "1.3", "reads 0.2 short", pin().settings(1, 3, set -> passes(set, -0.2, 0))),
                pin(Code.WRONG_PASSES, "1.3", "leaves 0.2 over", pin().settings(1, 3, set -> passes(set, 0, 0.2))),
                stud(
                        Code.WRONG_TRAIN,
                        "2.6",
                        "a wheel for another lead",
                        stud().settings(2, 6, set -> wheels(set, 60, 50))),
                stud(Code.WRONG_TRAIN, "2.6", "a wheel it lacks", stud().settings(2, 6, set -> wheels(set, 75, 90))),
                spindle(Code.WRONG_INDEXING, "3.1", "nine turns", spindle().settings(3, 1, set -> turns(set, 9))),
                spindle(Code.WRONG_ANGLE, "4.3", "a degree off", spindle().settings(4, 3, SettingsEdits::steeper)));
    }

    private static Settings passes(Settings set, double moreDial, double moreLeft) {
        Settings.Pass last = set.passes().getLast();
        var wrong = new Settings.Pass(
                last.number(), last.dial().plus(mm(moreDial)), last.leaves().plus(mm(moreLeft)));
        return SettingsEdits.with(set, List.of(wrong));
    }

    private static Settings wheels(Settings set, int driver, int driven) {
        var gearing = new Settings.Gearing(List.of(driver), List.of(driven), "C1", 0, "");
        return SettingsEdits.with(set, gearing);
    }

    private static Settings turns(Settings set, int turns) {
        return SettingsEdits.with(set, new Settings.Indexing(4, turns, 0, 20));
    }

    static Stream<Wrong> whole() {
        return Stream.of(
                pin(
                        Code.STOCK_TOO_SMALL,
                        "0.0",
                        "thinner than the part",
                        pin().blank(new Blank.RoundBar(mm(-1), mm(94), mm(17), true))),
                pin(Code.STOCK_TOO_SMALL, "0.0", "a slab", pin().blank(new Blank.Slab(mm(60), mm(30), mm(30)))),
                pin(Code.NO_MACHINE, "1.0", "no such machine", pin().machine(1, "old lathe")),
                pin(Code.NO_MACHINE, "2.1", "a mill does not face", pin().machine(2, "mill")),
                bush(Code.NOT_CUT_OFF, "0.0", "never sawn", bush().setUps(setUps -> setUps.subList(1, 3))),
                pin(Code.NOT_CUT_OFF, "0.0", "never parted", pin().without(1, 7)),
                pin(Code.NOT_TO_SIZE, "0.0", "a chamfer left out", pin().without(1, 4)),
                stud(Code.NOT_AS_DRAWN, "0.0", "a thread left out", stud().without(2, 6)),
                spindle(Code.NOT_AS_DRAWN, "0.0", "a keyway left out", spindle().without(6, 1)),
                pin(Code.OUT_OF_ORDER, "2.0", "numbered backwards", backwards()));
    }

    /** The first set-up given twice, by its own number. */
    private static Method backwards() {
        Method method = SmallWork.PIN.method();
        SetUp second = method.setUps().getLast();
        var misnumbered = new SetUp(
                2,
                second.machine(),
                second.holding(),
                second.instructions(),
                second.operations(),
                second.setting(),
                second.loading(),
                second.working());
        return new Method(
                method.title(),
                method.issue(),
                method.count(),
                method.stock(),
                List.of(misnumbered, method.setUps().getFirst()),
                method.cautions());
    }
}
