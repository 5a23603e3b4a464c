package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;

/** Writes down how a tapping drill was come by. */
final class TappingSteps {
    private final ScrewThread thread;
    private final LengthUnit unit;
    private final Working working;

    TappingSteps(ScrewThread thread, LengthUnit unit, Working working) {
        this.thread = thread;
        this.unit = unit;
        this.working = working;
    }

    void aim(HoleAim aim) {
        HoleRule rule = aim.rule();
        working.step(rule.why(), rule.formula(), rule.numbers(thread, unit), text(aim.diameter()), rule.source());
        aim.limits()
                .ifPresent(limits -> aim.most()
                        .ifPresent(most -> working.fact(
                                "Limits of the hole, inside thread of class " + limits.fit(),
                                text(aim.least()) + " to " + text(most),
                                limits.source())));
    }

    void choice(TappingChoice choice, HoleAim aim) {
        Length full = thread.profile().fullEngagement();
        String numbers =
                figures(thread.major()) + " − " + figures(choice.drill().diameter()) + ") / " + figures(full);
        working.step(
                "The nearest drill that would do is " + choice.drill() + "; it leaves",
                "engagement = (major − drill) / full engagement",
                "(" + numbers,
                String.format(Locale.ROOT, "%.0f %%", choice.engagement() * 100),
                Source.COMMON_PRACTICE);
        if (aim.most().isPresent() && !choice.withinLimits()) {
            working.caution(
                    "The hole lies outside the limits of the inside thread's usual class: a gauge would not pass it.");
        }
        if (thread.isTaper()) {
            working.caution(
                    "A taper thread inside is drilled to this and reamed 1 in 16 before tapping, or tapped straight"
                            + " from a smaller drill that the maker of the tap names.");
        }
    }

    private String text(Length length) {
        return LengthText.both(length, unit);
    }

    private String figures(Length length) {
        return LengthText.figures(length, unit);
    }
}
