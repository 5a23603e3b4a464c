package chargehand.trade.sum;

import java.util.List;
import java.util.Map;

/** How an ask ended. */
public sealed interface Outcome {
    /**
     * The sum was worked out.
     *
     * @param taken field names to how what was written was understood, in the order of the fields
     */
    record Answered(Sum sum, Map<String, String> taken, Answer answer, List<Step> working, List<String> cautions)
            implements Outcome {}

    /**
     * The ask was refused.
     *
     * @param field the key at fault; {@code sum} when there is no such sum
     * @param say a plain sentence: what was found and what would do
     */
    record Refused(String field, String say) implements Outcome {}
}
