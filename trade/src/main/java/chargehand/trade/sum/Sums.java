package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.TreeMap;

/** Every sum there is, by name. A sum joins by being declared as a service, so adding one touches nothing here. */
public final class Sums {
    private final TreeMap<String, Sum> byName = new TreeMap<>();

    private Sums() {
        for (Sum sum : ServiceLoader.load(Sum.class, Sum.class.getClassLoader())) {
            if (byName.put(sum.name(), sum) != null) {
                throw new IllegalStateException("two sums are named '" + sum.name() + "'");
            }
        }
    }

    /** Loads every declared sum. */
    public static Sums load() {
        return new Sums();
    }

    /** All sums in the order of their names. */
    public List<Sum> list() {
        return List.copyOf(byName.values());
    }

    public Optional<Sum> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /**
     * Answers one line of a stream, {@code {"id", "sum", "ask"}}, as a tree in the same shape with {@code "answer"},
     * {@code "working"}, {@code "cautions"} and how each field was {@code "taken"}, or with {@code "error"}. Nonsense of any
     * kind is refused in the tree, never thrown.
     *
     * @param shopUnit the unit of a bare number unless the ask brings its own {@code unit}
     */
    public Map<String, Object> answer(Map<String, ?> line, LengthUnit shopUnit) {
        return new AskLine(this, shopUnit).answer(line);
    }

    /** As {@link #answer(Map, LengthUnit)} in a shop that thinks in millimetres. */
    public Map<String, Object> answer(Map<String, ?> line) {
        return answer(line, LengthUnit.MILLIMETRE);
    }
}
