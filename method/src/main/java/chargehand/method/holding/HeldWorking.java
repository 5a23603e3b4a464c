package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Holding;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Locale;

/** Why a holding is stiff and true enough, for whoever asks. */
final class HeldWorking {
    private HeldWorking() {}

    /** The slenderness of what stands out of jaws or collet, and the run-out as held. */
    static List<Step> of(Overhang overhang, Holding.Support support, Length runOut, LengthUnit unit) {
        var working = new Working();
        String what = support instanceof Holding.Support.FixedSteady
                ? "Slenderness between jaws and steady"
                : "Slenderness of what stands out";
        working.step(
                what + ", length over diameter added up along it",
                "Σ l/d",
                LengthText.in(overhang.length(), unit) + " out of the jaws",
                judged(overhang.slenderness(), GripRules.most(support)),
                GripRules.SOURCE);
        working.fact(
                "Run-out as held, as measured for this holding",
                LengthText.in(runOut, unit) + " total indicator reading",
                GripRules.SOURCE);
        return working.steps();
    }

    private static String judged(double slenderness, double most) {
        String say =
                slenderness <= most ? "%.1f, up to %.0f allowed" : "%.1f, so that only what lies within %.0f is cut";
        return String.format(Locale.ROOT, say, slenderness, most);
    }
}
