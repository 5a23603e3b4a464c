package chargehand.trade.sum;

import java.util.ArrayList;
import java.util.List;

/** The working of one calculation, written by the code that computes, as it computes. */
public final class Working {
    private final List<Step> steps = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    /** Writes down one step by a rule. */
    public void step(String say, String formula, String numbers, String result, Source source) {
        steps.add(new Step(say, formula, numbers, result, source));
    }

    /** Writes down something looked up or chosen rather than computed. */
    public void fact(String say, String result, Source source) {
        steps.add(new Step(say, "", "", result, source));
    }

    /** Adds a short caution, once, where the work can hurt someone or the answer rests on an assumption. */
    public void caution(String say) {
        if (!cautions.contains(say)) {
            cautions.add(say);
        }
    }

    public List<Step> steps() {
        return List.copyOf(steps);
    }

    public List<String> cautions() {
        return List.copyOf(cautions);
    }
}
