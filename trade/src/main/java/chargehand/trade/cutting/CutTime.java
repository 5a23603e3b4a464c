package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** How long the tool is cutting. */
public final class CutTime {
    private static final double SECONDS_IN_MINUTE = 60;

    private CutTime() {}

    /** The time for so many passes along a path at a feed for each turn: t = passes × L / (f n). */
    public static WorkTime of(Length path, Length feed, SpindleSpeed rpm, int passes) {
        return WorkTime.seconds(passes * path.over(feed) / rpm.rpm() * SECONDS_IN_MINUTE);
    }

    static WorkTime of(Length path, Length feed, SpindleSpeed rpm, int passes, Working working) {
        WorkTime time = of(path, feed, rpm, passes);
        working.step(
                "Cutting time, from " + LengthText.mm(CutPlan.RUN_IN, 0) + " before the work",
                "t = passes × L / (f n)",
                passes + " × " + LengthText.mmFigures(path, LengthText.HUNDREDTH_MM) + " / ("
                        + LengthText.mmFigures(feed, LengthText.MICROMETRE) + " × " + Figures.four(rpm.rpm()) + ")",
                Figures.four(time.seconds() / SECONDS_IN_MINUTE) + " min",
                Source.GEOMETRY);
        return time;
    }
}
