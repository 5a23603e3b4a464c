package chargehand.trade.sum;

import java.util.LinkedHashMap;
import java.util.Map;

/** Outcomes as a neutral tree, in the shape of the lines that {@link AskLine} answers. */
public final class OutcomeTree {
    private OutcomeTree() {}

    /**
     * {@code {"answer", "working": [{"say", "formula", "numbers", "result", "source"}], "cautions", "taken"}}, or
     * {@code {"error": {"field", "say"}}}.
     */
    public static Map<String, Object> of(Outcome outcome) {
        return switch (outcome) {
            case Outcome.Answered answered -> answered(answered);
            case Outcome.Refused refused -> refused(refused);
        };
    }

    private static Map<String, Object> answered(Outcome.Answered answered) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("answer", FigureTree.of(answered.answer().figures()));
        tree.put("working", answered.working().stream().map(OutcomeTree::step).toList());
        tree.put("cautions", answered.cautions());
        tree.put("taken", new LinkedHashMap<>(answered.taken()));
        return tree;
    }

    private static Map<String, Object> step(Step step) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("say", step.say());
        tree.put("formula", step.formula());
        tree.put("numbers", step.numbers());
        tree.put("result", step.result());
        tree.put("source", step.source().text());
        return tree;
    }

    private static Map<String, Object> refused(Outcome.Refused refused) {
        var error = new LinkedHashMap<String, Object>();
        error.put("field", refused.field());
        error.put("say", refused.say());
        var tree = new LinkedHashMap<String, Object>();
        tree.put("error", error);
        return tree;
    }
}
