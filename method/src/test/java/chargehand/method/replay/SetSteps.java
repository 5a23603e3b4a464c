package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;
import static chargehand.method.replay.Steps.operation;

import chargehand.measure.Angle;
import chargehand.measure.LengthUnit;
import chargehand.measure.SpindleSpeed;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Settings;
import chargehand.part.End;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;

/** Operations written by hand that want more settings: wheels, an angle, indexing, other machines than the lathe. */
final class SetSteps {
    private SetSteps() {}

    /** The lathe's leadscrew has 6 mm: 50/60 on the gearbox's half turn cuts 2.5 mm. */
    static Operation screwCut(ScrewThread thread, double from, double to) {
        var cut = new Cut.ThreadOutside(thread, mm(from), mm(to), Cut.ThreadWay.SCREW_CUT);
        Operation plain = operation(
                "60° screw-cutting tool",
                cut,
                Steps.passes(thread.major().mm(), thread.core().mm()));
        var gearing = new Settings.Gearing(List.of(50), List.of(60), "C1", 0, "");
        return Steps.with(
                plain,
                new Settings(
                        plain.settings().tool(),
                        Optional.of(SpindleSpeed.rpm(50)),
                        Optional.empty(),
                        plain.settings().passes(),
                        Optional.of(gearing),
                        Optional.empty(),
                        Optional.empty(),
                        LengthUnit.MILLIMETRE,
                        ""));
    }

    static Operation tapered() {
        var cut = new Cut.TurnTaper(mm(56), mm(76), mm(30), mm(26), Cut.TaperWay.TOP_SLIDE);
        Operation plain = operation("right-hand knife tool", cut);
        Settings settings = plain.settings();
        return Steps.with(
                plain,
                new Settings(
                        settings.tool(),
                        settings.speed(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Angle.arctan(2.0 / 20)),
                        LengthUnit.MILLIMETRE,
                        ""));
    }

    static Holding inHead(double from, double to, double diameter, End headstock) {
        return new Holding.InDividingHead(
                "dividing head",
                new Holding.Grip(mm(from), mm(to), mm(diameter)),
                headstock,
                new Holding.Support.None(),
                mm(0.08));
    }

    /** Forty turns of the worm: ten for a quarter. */
    static Operation flats(int sides, double across, double from, double to, double round) {
        double deep = (round - across) / 2;
        var pass = new Settings.Pass(1, mm(deep), mm(across));
        var indexing = new Settings.Indexing(sides, 40 / sides, 0, 20);
        return milled("3/4 end mill", new Cut.MillFlats(sides, mm(across), mm(from), mm(to)), List.of(pass), indexing);
    }

    private static Operation milled(String tool, Cut cut, List<Settings.Pass> passes, Settings.Indexing indexing) {
        Operation plain = operation(tool, cut, passes);
        Optional<Settings.Indexing> indexed = cut instanceof Cut.MillFlats ? Optional.of(indexing) : Optional.empty();
        return Steps.with(
                plain,
                new Settings(
                        tool,
                        Optional.of(SpindleSpeed.rpm(560)),
                        Optional.empty(),
                        passes,
                        Optional.empty(),
                        indexed,
                        Optional.empty(),
                        LengthUnit.INCH,
                        ""));
    }

    static Holding across(String vice) {
        return new Holding.LaidAcross(vice, new Holding.Grip(mm(16), mm(56), mm(30)), Angle.degrees(0));
    }

    static Operation crossHole() {
        Operation plain = operation("drill 6 mm", new Cut.DrillAcross(mm(30), mm(6), Angle.degrees(0), true, mm(0)));
        return Steps.with(
                plain,
                new Settings(
                        "drill 6 mm",
                        Optional.of(SpindleSpeed.rpm(800)),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        LengthUnit.MILLIMETRE,
                        ""));
    }

    static Operation keyway() {
        return milled(
                "8 mm slot drill",
                new Cut.MillKeyway(mm(38), mm(15), mm(8), mm(4), Angle.degrees(0)),
                List.of(),
                new Settings.Indexing(1, 1, 0, 20));
    }
}
