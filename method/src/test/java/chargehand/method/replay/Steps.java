package chargehand.method.replay;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import chargehand.method.plan.Settings.Pass;
import chargehand.part.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Operations and holdings written by hand, in millimetres, on the demo kit's large lathe unless said otherwise. */
final class Steps {
    static final String LATHE = "large lathe";
    static final String CHUCK = "200 three-jaw";
    private static final double DEEPEST = 3;

    private Steps() {}

    static Length mm(double mm) {
        return Length.mm(mm);
    }

    static SetUp setUp(int number, String machine, Holding holding, Operation... operations) {
        return new SetUp(
                number,
                machine,
                holding,
                List.of(),
                numbered(List.of(operations)),
                WorkTime.minutes(5),
                WorkTime.minutes(1),
                List.of());
    }

    static List<Operation> numbered(List<Operation> operations) {
        var numbered = new ArrayList<Operation>();
        for (Operation each : operations) {
            numbered.add(new Operation(
                    numbered.size() + 1,
                    each.say(),
                    each.cut(),
                    each.settings(),
                    each.readings(),
                    each.hold(),
                    each.cautions(),
                    each.time(),
                    each.working()));
        }
        return numbered;
    }

    static Operation with(Operation operation, Cut cut) {
        return new Operation(
                operation.number(),
                operation.say(),
                cut,
                operation.settings(),
                operation.readings(),
                operation.hold(),
                operation.cautions(),
                operation.time(),
                operation.working());
    }

    static Operation with(Operation operation, Settings settings) {
        return new Operation(
                operation.number(),
                operation.say(),
                operation.cut(),
                settings,
                operation.readings(),
                operation.hold(),
                operation.cautions(),
                operation.time(),
                operation.working());
    }

    static Holding chuck(double from, double to, double diameter, End headstock) {
        return chuck(from, to, diameter, headstock, new Holding.Support.None());
    }

    static Holding chuck(double from, double to, double diameter, End headstock, Holding.Support support) {
        return new Holding.InChuck(
                CHUCK, 3, new Holding.Grip(mm(from), mm(to), mm(diameter)), headstock, support, mm(0.1));
    }

    /** With packing between the jaws and a finished surface. */
    static Holding packed(double from, double to, double diameter, End headstock) {
        return bearing(new Holding.Bearing.Closing(true), grip(from, to, diameter), headstock, 0.12);
    }

    /** In soft jaws bored to the diameter. */
    static Holding soft(double from, double to, double diameter, End headstock) {
        return bearing(new Holding.Bearing.SoftJaws(), grip(from, to, diameter), headstock, 0.02);
    }

    /** In a split bush between the jaws and the work. */
    static Holding bushed(Holding.Grip grip, End headstock, double outside) {
        return bearing(new Holding.Bearing.SplitBush(mm(outside), mm(1.5)), grip, headstock, 0.03);
    }

    /** With jaws that open in a finished bore, packed. */
    static Holding opening(double from, double to, double bore, End headstock) {
        return bearing(new Holding.Bearing.Opening(true), grip(from, to, bore), headstock, 0.12);
    }

    /** Packed, a fixed steady on a true place towards the outer end. */
    static Holding steadied(double from, double to, double diameter, End headstock, double at) {
        return new Holding.InChuck(
                CHUCK,
                3,
                new Holding.Bearing.Closing(true),
                grip(from, to, diameter),
                headstock,
                new Holding.Support.FixedSteady(mm(at), mm(diameter)),
                mm(0.12));
    }

    /** Clamped against the faceplate, dialled true. */
    static Holding faceplate(End headstock, double clamped, double within) {
        return new Holding.OnFaceplate(headstock, mm(clamped), mm(within), false, mm(0.02));
    }

    /** On a stub mandrel turned to the bore. */
    static Holding stub(double from, double to, double bore, End headstock) {
        return new Holding.OnStub("slugs for stub mandrels", mm(bore), mm(from), mm(to), headstock, mm(0.013));
    }

    static Holding.Grip grip(double from, double to, double diameter) {
        return new Holding.Grip(mm(from), mm(to), mm(diameter));
    }

    private static Holding bearing(Holding.Bearing bearing, Holding.Grip grip, End headstock, double runOut) {
        return new Holding.InChuck(CHUCK, 3, bearing, grip, headstock, new Holding.Support.None(), mm(runOut));
    }

    static Operation operation(String tool, Cut cut) {
        return operation(tool, cut, List.of());
    }

    static Operation operation(String tool, Cut cut, List<Pass> passes) {
        var settings = new Settings(
                tool,
                Optional.of(SpindleSpeed.rpm(260)),
                Optional.empty(),
                passes,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LengthUnit.MILLIMETRE,
                "");
        return new Operation(1, "cut", cut, settings, List.of(), false, List.of(), WorkTime.minutes(1), List.of());
    }

    /** Passes of at most 3 mm a side, read on a dial of the diameter. */
    static List<Pass> passes(double start, double finish) {
        double off = Math.abs(start - finish);
        int count = (int) Math.max(1, Math.ceil(off / (2 * DEEPEST)));
        var passes = new ArrayList<Pass>();
        for (int i = 1; i <= count; i++) {
            double taken = off * i / count;
            passes.add(new Pass(i, mm(taken), mm(finish < start ? start - taken : start + taken)));
        }
        return passes;
    }

    static Operation face(End end, double at) {
        return operation("right-hand knife tool", new Cut.FaceEnd(end, mm(at)));
    }

    static Operation turn(double from, double to, double start, double finish) {
        return operation(
                "right-hand knife tool", new Cut.TurnDiameter(mm(from), mm(to), mm(finish)), passes(start, finish));
    }

    static Operation groove(double from, double to, double start, double bottom) {
        return operation(
                "2 mm grooving tool",
                new Cut.CutGroove(mm(from), mm(to), mm(bottom)),
                List.of(new Pass(1, mm(start - bottom), mm(bottom))));
    }

    static Operation chamfer(double at, double diameter, End towards, double length) {
        return operation(
                "45° chamfering tool",
                new Cut.FinishEdge(
                        mm(at), mm(diameter), towards, false, new Cut.EdgeForm.Chamfer(mm(length), Angle.degrees(45))));
    }

    static Operation radius(double at, double diameter, End towards, double radius) {
        return operation(
                "1/16 round-nose tool",
                new Cut.FinishEdge(mm(at), mm(diameter), towards, false, new Cut.EdgeForm.Radius(mm(radius))));
    }

    static Operation centre(End end, double mouth, String drill) {
        return operation("centre drill " + drill, new Cut.CentreHole(end, mm(mouth)));
    }

    static Operation drill(End end, double diameter, double to) {
        String name = diameter == Math.rint(diameter) ? (int) diameter + " mm" : diameter + " mm";
        return operation("drill " + name, new Cut.DrillAxial(end, mm(diameter), mm(to)));
    }

    static Operation bore(End end, double start, double diameter, double to) {
        return operation("1/2 boring bar", new Cut.BoreTo(end, mm(diameter), mm(to)), passes(start, diameter));
    }

    static Operation ream(End end, double diameter, double to) {
        return operation("reamer " + diameter, new Cut.ReamTo(end, mm(diameter), mm(to)));
    }

    static Operation deburr() {
        return handDeburr(LengthUnit.MILLIMETRE);
    }

    static Operation handDeburr(LengthUnit unit) {
        return still(operation("hand scraper", new Cut.Deburr()), unit);
    }

    static Operation part(double from, double to, End side) {
        return operation("3 mm parting tool", new Cut.PartOff(mm(from), mm(to), side));
    }

    static Operation saw(double from, double to) {
        return still(operation("saw blade", new Cut.SawOff(mm(from), mm(to))), LengthUnit.INCH);
    }

    /** Done without a spindle turning. */
    private static Operation still(Operation operation, LengthUnit unit) {
        return with(
                operation,
                new Settings(
                        operation.settings().tool(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        unit,
                        ""));
    }

    static SetUp sawn(double from, double to) {
        return setUp(1, "saw", new Holding.Clamped("saw vice", mm(from), mm(to)), saw(from, to));
    }
}
