package chargehand.method.plan;

import chargehand.measure.WorkTime;
import chargehand.measure.WorkTimeText;
import java.util.Locale;

/**
 * How near a method is to the quickest. For each place that its stock stands further down the list of what would do, a minute
 * is counted on: metal is dearer than a minute.
 *
 * @param counted the method's time with what its stock counts on
 * @param least what nothing that was weighed, or could have been, takes less than; the same where the search came to its end
 * @param stock how many ways of cutting up stock were searched
 * @param stockLeft how many more there were, further down the list
 * @param shares whether every set-up was weighed that leaves out what it could do, beside those that do all they can
 */
public record Bound(WorkTime counted, WorkTime least, int stock, int stockLeft, boolean shares) {
    /** Below this two times are the same (s). */
    private static final double SAME = 0.5;

    /** What a gap in tenths of a hundredth may be over a whole number by the way it is reckoned. */
    private static final double ROUNDING = 1e-6;

    /** Whether nothing weighed was quicker and nothing was left to weigh. */
    public boolean isQuickest() {
        return counted.seconds() - least.seconds() < SAME;
    }

    /** How much longer than the quickest it may be at the most: 0.05 for five in a hundred. */
    public double gap() {
        return isQuickest() ? 0 : counted.seconds() / least.seconds() - 1;
    }

    /** It said to a person. */
    public String says() {
        String ways = stock == 1 ? "one way of cutting up stock" : stock + " ways of cutting up stock";
        String left = stockLeft == 0
                ? ""
                : " " + stockLeft + " more, dearer in metal, " + (stockLeft == 1 ? "was" : "were") + " not searched.";
        return isQuickest()
                ? "The quickest of all that was weighed, on " + ways
                        + ", a minute counted on for each place that stock is dearer in metal; set-ups that leave out what they"
                        + " could do were weighed " + (shares ? "too." : "in part.") + left
                : String.format(
                        Locale.ROOT,
                        "The quickest found when the search was ended, on %s: none can take less than %s, so it is at"
                                + " most %.1f %% longer than the quickest.%s",
                        ways,
                        WorkTimeText.of(least),
                        Math.ceil(1000 * gap() - ROUNDING) / 10,
                        left);
    }
}
