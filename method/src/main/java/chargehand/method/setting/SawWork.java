package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.WorkTime;
import chargehand.method.holding.ByRule;
import chargehand.method.kit.Saw;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.SetUp;
import chargehand.method.work.Blanks;
import java.util.List;

/** Writes the set-up that saws blanks from the bar before anything else is done. */
public final class SawWork {
    private static final double SETTING_MINUTES = 4;
    private static final double LOADING_MINUTES = 1;
    private static final double SQUARE_MM_PER_MINUTE = 300;

    private SawWork() {}

    /** Saws one blank for each piece. */
    public static SetUp blanks(Saw saw, Blank blank) {
        Length from = Blanks.from(blank);
        Length to = Blanks.to(blank);
        String say = "Saw off " + LengthText.both(ByRule.up(to.minus(from), saw.unit()), saw.unit()) + ", square";
        var draft = new Draft(say, new Cut.SawOff(from, to), "saw blade", saw.unit());
        double area = Math.PI / 4 * Math.pow(Blanks.swing(blank).mm(), 2);
        draft.takes(area / SQUARE_MM_PER_MINUTE);
        draft.caution("Sawn ends are sharp and hot: gloves off at the running saw, on to carry.");
        return new SetUp(
                1,
                saw.name(),
                new Holding.Clamped("saw vice", from, to),
                List.of("Clamp the bar in the saw's vice, level, with its end supported."),
                List.of(draft.write(1)),
                WorkTime.minutes(SETTING_MINUTES),
                WorkTime.minutes(LOADING_MINUTES),
                List.of());
    }
}
