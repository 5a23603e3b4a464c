package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Slides;
import chargehand.method.plan.Settings;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Splits what is to come off into passes: roughing cuts as deep as tool and power allow, then one light finishing cut, each
 * with the cross dial's reading counted from the surface the tool was touched on.
 */
final class CutDepth {
    /** The deepest roughing cut on one side that a learner is given. */
    private static final Length DEEPEST = Length.mm(2);

    /** What is left on each side for the finishing cut. */
    private static final Length FINISH_MM = Length.mm(0.25);

    private static final Length FINISH_IN = Length.thou(10);

    private CutDepth() {}

    /** What the finishing cut takes off the diameter, in the unit of the dial. */
    static Length finishing(LengthUnit unit) {
        return (unit == LengthUnit.INCH ? FINISH_IN : FINISH_MM).times(2);
    }

    /**
     * The passes on a lathe's cross slide.
     *
     * @param lathe whose dial is set
     * @param from the diameter the tool is touched on
     * @param to the diameter to leave; less than {@code from} outside, more inside
     * @param deepest the deepest cut on one side
     */
    static List<Settings.Pass> passes(Lathe lathe, Length from, Length to, Length deepest, Working working) {
        Slides slides = lathe.slides();
        Length off = from.minus(to).abs();
        Length finish = Length.least(off, finishing(lathe.unit()));
        Length rough = off.minus(finish);
        int roughs = rough.isMoreThan(finish.half()) ? (int) Math.ceil(rough.over(deepest.times(2))) : 0;
        var passes = new ArrayList<Settings.Pass>();
        boolean inward = to.isLessThan(from);
        for (int i = 1; i <= roughs; i++) {
            Length dial = slides.cross().notAbove(slides.crossReading(rough.times((double) i / roughs)));
            Length taken = slides.offDiameter(dial);
            passes.add(new Settings.Pass(i, dial, inward ? from.minus(taken) : from.plus(taken)));
        }
        passes.add(new Settings.Pass(roughs + 1, slides.cross().nearest(slides.crossReading(off)), to));
        working.step(
                "Passes, with the cross dial reading " + slides.crossReads().word() + " from where the tool touched",
                "passes = (d₁ − d₂ − finish) / (2 a), rounded up, and one to finish",
                String.format(
                        Locale.ROOT,
                        "(%.2f − %.2f − %.2f) mm / (2 × %.2f mm)",
                        Math.max(from.mm(), to.mm()),
                        Math.min(from.mm(), to.mm()),
                        finish.mm(),
                        deepest.mm()),
                passes.size() + (passes.size() == 1 ? " pass" : " passes"),
                CutKind.SOURCE);
        return passes;
    }

    /** The deepest roughing cut that the lathe's power carries at this speed and feed. */
    static Length deepest(Lathe lathe, Material material, double metresPerMinute, Length feed, Working working) {
        if (material.kienzle().isEmpty()) {
            return DEEPEST;
        }
        double kc = material.kienzle().get().specificForce(feed).megapascals();
        double watts = lathe.power().watts();
        double byPower = watts / (kc * feed.mm() * metresPerMinute / 60);
        Length deepest = Length.least(DEEPEST, Length.mm(Math.max(0.25, byPower)));
        working.step(
                "Deepest cut on a side: what the power carries, at most 2 mm for a learner",
                "a = P / (kc f v)",
                String.format(
                        Locale.ROOT,
                        "%.0f W / (%.0f N/mm² × %.3f mm × %.1f m/min)",
                        watts,
                        kc,
                        feed.mm(),
                        metresPerMinute),
                String.format(Locale.ROOT, "%.2f mm; taken %.2f mm", byPower, deepest.mm()),
                material.kienzle().get().source());
        return deepest;
    }
}
