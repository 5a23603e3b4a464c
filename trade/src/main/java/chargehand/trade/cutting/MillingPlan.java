package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Power;
import chargehand.measure.Torque;
import chargehand.measure.WorkTime;
import chargehand.trade.cutting.CutSettings.Limit;
import chargehand.trade.cutting.CutSettings.Load;
import chargehand.trade.cutting.CutSettings.Spindle;
import chargehand.trade.material.Kienzle;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Milling with a cutter whose teeth enter the work one after another. */
final class MillingPlan {
    private static final int USUAL_TEETH = 4;
    private static final double USUAL_WIDTH = 0.5;
    private static final Length SHALLOWEST = Length.mm(0.05);
    private static final double SECONDS_IN_MINUTE = 60;
    private static final Source MILLING = Source.published("metal removed in a minute × specific cutting force");
    private static final Source ENGAGEMENT = Source.published("geometry of the tooth's path: mean chip thickness");

    private final Cut cut;
    private final Working working;
    private final Length width;
    private final int teeth;

    MillingPlan(Cut cut, Working working) {
        this.cut = cut;
        this.working = working;
        width = cut.width().orElseGet(() -> cut.diameter().times(USUAL_WIDTH));
        teeth = cut.teeth().orElse(USUAL_TEETH);
        if (width.isMoreThan(cut.diameter())) {
            throw new CannotCut("width", "the cut is wider than the cutter: take it in strips, or a larger cutter.");
        }
    }

    CutSettings settings() {
        Spindle spindle = new SpindleChoice(cut, working).choose();
        Length perMinute = feedInMinute(spindle);
        Length feed = perMinute.times(1 / spindle.rpm().rpm());
        Length perTooth = feed.times(1.0 / teeth);
        Optional<Length> pulled = depthByPower(perMinute, perTooth);
        Length usual =
                cut.finishing() ? cut.practice().depthFinish() : cut.practice().depthRough();
        Length most = pulled.map(deep -> Length.least(deep, usual)).orElse(usual);
        cut.depth().ifPresent(depth -> Passes.refuseTooMany(depth, most));
        List<Length> depths = cut.depth()
                .map(depth -> Passes.equal(depth, Length.least(most, depth)))
                .orElse(List.of(most));
        return new CutSettings(
                spindle,
                feed,
                Rotation.feedRate(feed, spindle.rpm()),
                depths,
                load(spindle, perMinute, perTooth, Collections.max(depths)),
                cut.length().map(length -> time(length, perMinute, depths.size())),
                Optional.empty(),
                pulled.filter(deep -> deep.isLessThan(usual)).isPresent()
                        ? Limit.POWER
                        : SpindleChoice.limit(spindle, cut));
    }

    private Length feedInMinute(Spindle spindle) {
        Length perTooth =
                cut.finishing() ? cut.practice().feedFinish() : cut.practice().feedRough();
        Length usual = perTooth.times(teeth * spindle.rpm().rpm());
        working.step(
                "Feed of the table in a minute",
                "vf = fz × z × n",
                said(perTooth) + " × " + teeth + " × "
                        + Figures.four(spindle.rpm().rpm()),
                said(usual) + "/min",
                cut.practice().source());
        Length chosen = Steps.notAbove(cut.machine().feeds(), usual);
        if (!cut.machine().feeds().isEmpty()) {
            working.fact("The machine's own feed at or below it", said(chosen) + "/min", Source.COMMON_PRACTICE);
        }
        return chosen;
    }

    /** The mean thickness of the chip while a tooth is in the work. */
    private Length meanChip(Length perTooth) {
        double share = width.over(cut.diameter());
        double engaged = Math.acos(1 - 2 * share);
        return perTooth.times(2 * share / engaged);
    }

    private Optional<Length> depthByPower(Length perMinute, Length perTooth) {
        Optional<Kienzle> law = cut.material().kienzle();
        if (law.isEmpty() || cut.machine().power().isEmpty()) {
            return Optional.empty();
        }
        double available = Drive.atEdge(cut.machine().power().get()).watts();
        double perMm = watts(law.get(), perMinute, perTooth, Length.mm(1));
        double deep = available / perMm;
        if (deep < SHALLOWEST.mm()) {
            throw new CannotCut(
                    "power",
                    "the motor has not the power for this cutter at this speed: take a smaller cutter,"
                            + " a narrower cut or a slower feed.");
        }
        Length most = Length.mm(Math.min(deep, 10 * cut.diameter().mm()));
        working.step(
                "Deepest pass that the motor pulls, " + Figures.four(100 * Drive.EFFICIENCY)
                        + " % of its power reaching the edge",
                "a = P η / (power for 1 mm)",
                Figures.four(available) + " W / " + Figures.four(perMm) + " W/mm",
                said(most),
                Source.COMMON_PRACTICE);
        return Optional.of(most);
    }

    private double watts(Kienzle law, Length perMinute, Length perTooth, Length depth) {
        double specific = law.specificForce(meanChip(perTooth)).megapascals();
        return specific * depth.mm() * width.mm() * perMinute.mm() / 1000 / SECONDS_IN_MINUTE;
    }

    private Optional<Load> load(Spindle spindle, Length perMinute, Length perTooth, Length depth) {
        return cut.material().kienzle().map(law -> {
            Length mean = meanChip(perTooth);
            working.step(
                    "Mean thickness of the chip",
                    "hm = fz × 2 (ae/D) / φ,  cos φ = 1 − 2 ae/D",
                    said(perTooth) + ", ae/D = " + Figures.four(width.over(cut.diameter())),
                    said(mean),
                    ENGAGEMENT);
            double specific = Drive.specificForce(law, mean, working).megapascals();
            double watts = watts(law, perMinute, perTooth, depth);
            working.step(
                    "Power at the edge",
                    "P = kc × ap × ae × vf / 60000",
                    Figures.four(specific) + " × " + said(depth) + " × " + said(width) + " × " + said(perMinute)
                            + "/min / 60000",
                    Figures.four(watts) + " W",
                    MILLING);
            double newtons = watts * SECONDS_IN_MINUTE / spindle.speed().metresPerMinute();
            working.step(
                    "Mean force along the cut",
                    "Fc = 60 P / v",
                    "60 × " + Figures.four(watts) + " / "
                            + Figures.four(spindle.speed().metresPerMinute()),
                    Figures.four(newtons) + " N",
                    MILLING);
            return new Load(
                    Force.newtons(newtons),
                    Torque.newtonMetres(newtons * cut.diameter().mm() / 2 / 1000),
                    Power.watts(watts));
        });
    }

    private WorkTime time(Length length, Length perMinute, int passes) {
        Length approach = approach();
        Length path = length.plus(approach);
        var time = WorkTime.seconds(passes * path.over(perMinute) * SECONDS_IN_MINUTE);
        working.step(
                "Cutting time, the cutter coming in from clear of the work",
                "t = passes × (L + (D − √(D² − w²)) / 2) / vf",
                passes + " × (" + said(length) + " + " + said(approach) + ") / " + said(perMinute) + "/min",
                Figures.four(time.seconds() / SECONDS_IN_MINUTE) + " min",
                Source.GEOMETRY);
        return time;
    }

    /** How far a cutter set over the middle of the cut must come before it is in to its full width. */
    private Length approach() {
        double diameter = cut.diameter().mm();
        return Length.mm((diameter - Math.sqrt(diameter * diameter - width.mm() * width.mm())) / 2);
    }

    private static String said(Length length) {
        return LengthText.mm(length, LengthText.MICROMETRE);
    }
}
