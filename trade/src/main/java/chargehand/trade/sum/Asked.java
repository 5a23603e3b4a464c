package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What was asked, read and typed: every ambiguity is settled before a sum sees it. */
public final class Asked {
    private final Map<Field<?>, Object> values = new LinkedHashMap<>();
    private final LengthUnit unit;

    Asked(Map<Field<?>, Object> values, LengthUnit unit) {
        this.values.putAll(values);
        this.unit = unit;
    }

    /** The unit bare numbers were read in, and the one to show first. */
    public LengthUnit unit() {
        return unit;
    }

    /** What was given for the field, or its fallback; refuses when there is neither. */
    public <T> T get(Field<T> field) {
        return find(field).orElseThrow(() -> Refusal.of(field, field.label() + " is needed: " + field.hint()));
    }

    /** What was given for the field, or its fallback, if either. */
    @SuppressWarnings("unchecked") // a value is only ever stored under the field whose kind read it
    public <T> Optional<T> find(Field<T> field) {
        return Optional.ofNullable((T) values.get(field));
    }

    /** Whether the field has a value, its own or its fallback. */
    public boolean has(Field<?> field) {
        return values.containsKey(field);
    }
}
