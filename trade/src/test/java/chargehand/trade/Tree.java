package chargehand.trade;

import java.util.Map;

/** Finds its way in an answer shown as a tree, and says plainly when a name is not there. */
public final class Tree {
    private Tree() {}

    /** What stands at the end of the path of names. */
    public static Object at(Object tree, String... path) {
        Object value = tree;
        for (String name : path) {
            if (!(value instanceof Map<?, ?> map)) {
                throw new AssertionError("no '" + name + "' in " + value);
            }
            Object next = map.get(name);
            if (next == null) {
                throw new AssertionError("no '" + name + "' in " + map);
            }
            value = next;
        }
        return value;
    }

    /** The number at the end of the path of names. */
    public static double number(Object tree, String... path) {
        if (at(tree, path) instanceof Number number) {
            return number.doubleValue();
        }
        throw new AssertionError(at(tree, path) + " is no number");
    }
}
