package chargehand.trade.sum;

import java.util.List;
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
}
