package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What any answer keeps to, whatever was asked: only numbers, no size, force or stress below nought but where the figure is a
 * difference or a direction, chances between nought and one, and a least no larger than its most.
 */
final class AnswerRange {
    /** Figures that may have either sign, by the last names of their paths. */
    private static final Set<String> SIGNED = Set.of(
            "clearanceMax",
            "clearanceMin",
            "upper",
            "lower",
            "length",
            "off64",
            "thou",
            "off",
            "diameterOff",
            "pitchOff",
            "outsideOff",
            "shift",
            "change",
            "wear",
            "left",
            "rate",
            "shaftStress",
            "error",
            "errorOver",
            "angleError",
            "across",
            "up",
            "plateHoles",
            "plateRatio",
            "C",
            "F");

    private static final Set<String> CHANCES = Set.of("probability", "chanceInBand");
    private static final Set<String> PERCENTAGES = Set.of("wastePercent", "engagement");

    /** Left-hand figures never lie above the right-hand ones of the same group. */
    private static final Map<String, String> IN_ORDER = Map.of(
            "min", "max",
            "low", "high",
            "clearanceMin", "clearanceMax",
            "holeMin", "holeMax",
            "shaftMin", "shaftMax",
            "wireMin", "wireMax",
            "overMin", "overMax",
            "runoutLeast", "runoutMost",
            "bound", "used");

    private static final double ROUNDING = 1e-9;

    private AnswerRange() {}

    /** Fails where any figure of a tree lies out of range. */
    static void check(Object tree) {
        check(tree, "answer", false);
    }

    private static void check(Object tree, String name, boolean signed) {
        boolean either = signed || SIGNED.contains(name);
        switch (tree) {
            case Map<?, ?> map -> {
                inOrder(map);
                map.forEach((key, value) -> check(value, String.valueOf(key), either));
            }
            case List<?> list -> list.forEach(value -> check(value, name, either));
            case Number number -> number(number.doubleValue(), name, either);
            default -> assertThat(tree).as(name).isNotNull();
        }
    }

    private static void number(double number, String name, boolean signed) {
        assertThat(number).as(name).isFinite();
        if (!signed) {
            assertThat(number).as(name).isGreaterThanOrEqualTo(0);
        }
        if (CHANCES.contains(name)) {
            assertThat(number).as(name).isLessThanOrEqualTo(1 + ROUNDING);
        }
        if (PERCENTAGES.contains(name)) {
            assertThat(number).as(name).isLessThanOrEqualTo(100 + ROUNDING);
        }
    }

    private static void inOrder(Map<?, ?> group) {
        IN_ORDER.forEach((least, most) -> {
            if (group.get(least) != null && group.get(most) != null) {
                assertThat(first(group.get(least)))
                        .as(least + " and " + most)
                        .isLessThanOrEqualTo(first(group.get(most)) + ROUNDING);
            }
        });
    }

    /** A plain number, or a quantity in the first of its units. */
    private static double first(Object figure) {
        Object number =
                figure instanceof Map<?, ?> units ? units.values().iterator().next() : figure;
        return ((Number) number).doubleValue();
    }
}
