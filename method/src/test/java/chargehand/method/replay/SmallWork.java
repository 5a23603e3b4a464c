package chargehand.method.replay;

import static chargehand.method.replay.SetSteps.across;
import static chargehand.method.replay.SetSteps.crossHole;
import static chargehand.method.replay.SetSteps.flats;
import static chargehand.method.replay.SetSteps.inHead;
import static chargehand.method.replay.SetSteps.keyway;
import static chargehand.method.replay.SetSteps.screwCut;
import static chargehand.method.replay.SetSteps.tapered;
import static chargehand.method.replay.Steps.bore;
import static chargehand.method.replay.Steps.centre;
import static chargehand.method.replay.Steps.chamfer;
import static chargehand.method.replay.Steps.chuck;
import static chargehand.method.replay.Steps.deburr;
import static chargehand.method.replay.Steps.drill;
import static chargehand.method.replay.Steps.face;
import static chargehand.method.replay.Steps.faceplate;
import static chargehand.method.replay.Steps.groove;
import static chargehand.method.replay.Steps.handDeburr;
import static chargehand.method.replay.Steps.mm;
import static chargehand.method.replay.Steps.opening;
import static chargehand.method.replay.Steps.operation;
import static chargehand.method.replay.Steps.packed;
import static chargehand.method.replay.Steps.part;
import static chargehand.method.replay.Steps.radius;
import static chargehand.method.replay.Steps.ream;
import static chargehand.method.replay.Steps.sawn;
import static chargehand.method.replay.Steps.setUp;
import static chargehand.method.replay.Steps.soft;
import static chargehand.method.replay.Steps.steadied;
import static chargehand.method.replay.Steps.stub;
import static chargehand.method.replay.Steps.turn;

import chargehand.measure.LengthUnit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.trade.thread.ScrewThread;
import java.util.List;

/** Small parts and methods for them, written by hand as a turner would, each of which makes its part. */
enum SmallWork {
    /** A stepped pin, parted from the bar and faced in a second holding. */
    PIN("""
            - {round: 12, length: 20, at-a: chamfer 1, at-b: radius 1}
            - {round: 18, length: 30}
            """, "") {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-1), mm(94), mm(20), true),
                    setUp(
                            1,
                            Steps.LATHE,
                            chuck(56, 94, 20, End.B),
                            face(End.A, 0),
                            turn(0, 54, 20, 18),
                            turn(0, 20, 18, 12),
                            chamfer(0, 12, End.B, 1),
                            radius(20, 12, End.A, 1),
                            deburr(),
                            part(51, 54, End.A)),
                    setUp(2, Steps.LATHE, packed(0, 18, 12, End.A), face(End.B, 50), deburr()));
        }
    },

    /** A bush, bored and reamed from a sawn blank, a counterbore from the other end. */
    BUSH("""
            - {round: 40, length: 30, at-b: chamfer 1}
            """, """
            - {ream: 20, name: hole}
            - {counterbore: 26, from: B, depth: 8, name: recess}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-21), mm(31), mm(45), false),
                    sawn(-21, 31),
                    setUp(
                            2,
                            Steps.LATHE,
                            chuck(-21, -5, 45, End.A),
                            face(End.B, 30),
                            centre(End.B, 5, "BS 4"),
                            drill(End.B, 10, -21),
                            drill(End.B, 19.5, -21),
                            ream(End.B, 20, -21),
                            bore(End.B, 20, 26, 22),
                            turn(-4, 30, 45, 40),
                            chamfer(30, 40, End.A, 1),
                            deburr(),
                            part(-4, -1, End.B)),
                    setUp(3, Steps.LATHE, packed(5, 29, 40, End.B), face(End.A, 0), deburr()));
        }
    },

    /** A stud screw-cut at one end and died at the other, necked between. */
    STUD("""
            - {thread: M20, length: 30, at-a: chamfer 2}
            - {groove: 16, length: 6}
            - {round: 24, length: 20}
            - {thread: M16, length: 25, at-b: chamfer 1.5}
            """, "") {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-2), mm(83), mm(25), false),
                    sawn(-2, 83),
                    setUp(
                            2,
                            Steps.LATHE,
                            chuck(60, 83, 25, End.B),
                            face(End.A, 0),
                            turn(0, 56, 25, 24),
                            turn(0, 30, 24, 20),
                            groove(30, 36, 20, 16),
                            chamfer(0, 20, End.B, 2),
                            screwCut(ScrewThread.parse("M20"), 0, 30),
                            deburr()),
                    setUp(
                            3,
                            Steps.LATHE,
                            packed(36, 52, 24, End.A),
                            face(End.B, 81),
                            turn(56, 81, 25, 16),
                            chamfer(81, 16, End.A, 1.5),
                            operation(
                                    "die M16 in the tailstock holder",
                                    new Cut.ThreadOutside(
                                            ScrewThread.parse("M16"),
                                            mm(56),
                                            mm(81),
                                            Cut.ThreadWay.DIE_FROM_TAILSTOCK)),
                            deburr()));
        }
    },

    /** A squared spindle end with a cross hole and a keyway, centred for its taper. */
    SPINDLE("""
            - {square: 15, corners: 20, length: 16}
            - {round: 30, length: 40}
            - {cone: {from: 30, to: 26}, length: 20}
            """, """
            - {hole: 6, at: 30, name: pin hole}
            - {keyway: 8, depth: 4, at: 38, length: 15, name: key}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-2), mm(78), mm(32), false),
                    sawn(-2, 78),
                    setUp(
                            2,
                            Steps.LATHE,
                            chuck(62, 78, 32, End.B),
                            face(End.A, 0),
                            turn(0, 56, 32, 30),
                            turn(0, 16, 30, 20),
                            deburr()),
                    setUp(3, "mill", inHead(58, 78, 32, End.B), flats(4, 15, 0, 16, 20), handDeburr(LengthUnit.INCH)),
                    setUp(
                            4,
                            Steps.LATHE,
                            packed(18, 50, 30, End.A),
                            face(End.B, 76),
                            turn(56, 76, 32, 30),
                            tapered(),
                            deburr()),
                    setUp(5, "radial drill", across("vee blocks"), crossHole(), handDeburr(LengthUnit.MILLIMETRE)),
                    setUp(6, "mill", across("6 in machine vice"), keyway(), handDeburr(LengthUnit.INCH)));
        }
    },

    /** A ring too thin for hard jaws, parted from the bar and faced in soft jaws bored to it. */
    RING("""
            - {round: 42, length: 20}
            """, """
            - {bore: 38, name: hole}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-1), mm(64), mm(45), true),
                    setUp(
                            1,
                            Steps.LATHE,
                            chuck(26, 64, 45, End.B),
                            face(End.A, 0),
                            centre(End.A, 5, "BS 4"),
                            drill(End.A, 10, 25),
                            drill(End.A, 19.5, 25),
                            bore(End.A, 19.5, 38, 25),
                            turn(0, 25, 45, 42),
                            deburr(),
                            part(21, 24, End.A)),
                    setUp(2, Steps.LATHE, soft(0, 18, 42, End.A), face(End.B, 20), deburr()));
        }
    },

    /** A sleeve bored in one holding and turned on in a second, held by its bore. */
    SLEEVE("""
            - {round: 100, length: 40}
            """, """
            - {bore: 70, name: hole}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-1), mm(41), mm(105), false),
                    sawn(-1, 41),
                    setUp(
                            2,
                            Steps.LATHE,
                            chuck(18, 41, 105, End.B),
                            face(End.A, 0),
                            centre(End.A, 5, "BS 4"),
                            drill(End.A, 10, 41),
                            drill(End.A, 19.5, 41),
                            bore(End.A, 19.5, 70, 41),
                            turn(0, 16, 105, 100),
                            deburr()),
                    setUp(
                            3,
                            Steps.LATHE,
                            opening(0, 20, 70, End.A),
                            face(End.B, 40),
                            turn(16, 40, 105, 100),
                            deburr()));
        }
    },

    /** A disc bored as it sits on the steps of the jaws, and finished on a stub mandrel. */
    DISC("""
            - {round: 58, length: 8, at-a: chamfer 1}
            """, """
            - {bore: 25, name: hole}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-1.5), mm(9.5), mm(60), false),
                    sawn(-1.5, 9.5),
                    setUp(
                            2,
                            Steps.LATHE,
                            chuck(-1.5, 4, 60, End.A),
                            face(End.B, 8),
                            centre(End.B, 5, "BS 4"),
                            drill(End.B, 19.5, -1.5),
                            bore(End.B, 19.5, 25, -1.5),
                            deburr()),
                    setUp(
                            3,
                            Steps.LATHE,
                            stub(0, 8, 25, End.B),
                            face(End.A, 0),
                            turn(0, 8, 60, 58),
                            chamfer(0, 58, End.B, 1),
                            deburr()));
        }
    },

    /** A long shaft of bright bar whose ends are worked in a fixed steady. */
    SHAFT("""
            - {round: 30, length: 300, at-b: chamfer 1}
            """, """
            - {drill: 12, from: A, depth: 30, name: hole}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-1), mm(301), mm(30), false),
                    sawn(-1, 301),
                    setUp(
                            2,
                            Steps.LATHE,
                            steadied(263, 301, 30, End.B, 20),
                            face(End.A, 0),
                            centre(End.A, 5, "BS 4"),
                            drill(End.A, 12, 30),
                            deburr()),
                    setUp(
                            3,
                            Steps.LATHE,
                            steadied(0, 38, 30, End.A, 280),
                            face(End.B, 300),
                            chamfer(300, 30, End.A, 1),
                            deburr()));
        }
    },

    /** A flange whose bore is made last, clamped by its flange against the faceplate. */
    FLANGE("""
            - {round: 90, length: 10}
            - {round: 50, length: 30}
            """, """
            - {ream: 20, name: hole}
            """) {
        @Override
        Method method() {
            return methodOf(
                    new Blank.RoundBar(mm(-1), mm(41), mm(95), false),
                    sawn(-1, 41),
                    setUp(2, Steps.LATHE, chuck(18, 41, 95, End.B), face(End.A, 0), turn(0, 10, 95, 90), deburr()),
                    setUp(3, Steps.LATHE, packed(0, 9, 90, End.A), face(End.B, 40), turn(10, 40, 95, 50), deburr()),
                    setUp(
                            4,
                            Steps.LATHE,
                            faceplate(End.A, 10, 50),
                            centre(End.B, 5, "BS 4"),
                            drill(End.B, 19.5, 0),
                            ream(End.B, 20, 0),
                            deburr()));
        }
    };

    private final String text;

    SmallWork(String outside, String more) {
        this.text = outside + "|" + more;
    }

    abstract Method method();

    /** The part, as its reader gives it. */
    Part drawn() {
        return drawn("");
    }

    /** The part with more said of it, such as ties. */
    Part drawn(String last) {
        String outside = text.substring(0, text.indexOf('|'));
        String more = text.substring(text.indexOf('|') + 1);
        String second = more.contains("keyway") ? "across:\n" : more.isEmpty() ? "" : "inside:\n";
        return read("part: Small work\nunit: mm\nmaterial: EN8\ngeneral: ISO 2768-m\noutside:\n" + outside + second
                + more + last);
    }

    static Part read(String yaml) {
        return switch (PartFile.read(yaml)) {
            case PartReading.Read read -> read.part();
            case PartReading.Faulty faulty -> throw new AssertionError(faulty.faults());
        };
    }

    static Method methodOf(Blank blank, SetUp... setUps) {
        var stock = new Method.StockUse("A1", "bar", blank, 1, List.of(), List.of());
        return new Method("Small work", "A", 1, stock, List.of(setUps), List.of());
    }
}
