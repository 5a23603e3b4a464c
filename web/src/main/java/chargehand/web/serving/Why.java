package chargehand.web.serving;

import chargehand.trade.sum.Step;
import java.util.List;

/**
 * A figure or a choice, with the working behind it.
 *
 * @param label what it is
 * @param say the figure or the choice
 * @param steps how it came about; none where it speaks for itself
 */
public record Why(String label, String say, List<Step> steps) {
    public Why {
        steps = List.copyOf(steps);
    }
}
