package chargehand.timing;

import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Asking;
import chargehand.trade.sum.FigureTree;
import chargehand.trade.sum.Outcome;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Sums;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A sum asked as a person or a stream asks it, so that what is measured is all of it. */
record AskedSum(Sum sum) {
    static AskedSum named(String name) {
        return new AskedSum(Sums.load().find(name).orElseThrow());
    }

    /** The answer as a tree of maps, lists, numbers and text; bare numbers are millimetres. */
    Map<String, Object> answer(Map<String, String> ask) {
        return switch (Asking.ask(sum, ask, LengthUnit.MILLIMETRE)) {
            case Outcome.Answered answered -> FigureTree.of(answered.answer().figures());
            case Outcome.Refused refused ->
                throw new IllegalStateException(sum.name() + " " + ask + " was refused: " + refused.say());
        };
    }

    /** The number at a path through such a tree. */
    static double number(Map<String, Object> tree, String... path) {
        Object at = tree;
        for (String key : path) {
            at = Objects.requireNonNull(((Map<?, ?>) at).get(key), key);
        }
        return ((Number) at).doubleValue();
    }

    /** The list under a key of such a tree. */
    static List<?> list(Map<String, Object> tree, String key) {
        return (List<?>) Objects.requireNonNull(tree.get(key), key);
    }
}
