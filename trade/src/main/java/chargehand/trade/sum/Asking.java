package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import chargehand.measure.OutOfRange;
import chargehand.measure.Unreadable;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The one door to a sum: reads what was written field by field, works the sum out, and turns every fault of the ask into
 * {@link Outcome.Refused}. Any other exception is a defect of the sum and goes through, for the edge to report.
 */
public final class Asking {
    /** The key that any sum takes for the unit of its bare numbers. */
    public static final String UNIT = "unit";

    private static final int MOST_CHARACTERS = 20_000;

    private Asking() {}

    /**
     * Asks {@code sum} with what a person wrote.
     *
     * @param written field names to text; a blank text counts as not given
     * @param shopUnit the unit of a bare number unless the ask brings its own {@code unit}
     */
    public static Outcome ask(Sum sum, Map<String, String> written, LengthUnit shopUnit) {
        try {
            return strictly(sum, written, shopUnit);
        } catch (OutOfRange beyond) {
            // A quantity was not built in the middle of the sum: some figure is far outside the trade.
            return new Outcome.Refused(
                    sum.name(), "these figures lead to something far outside the trade: " + beyond.getMessage() + ".");
        }
    }

    /** As {@link #ask}, but lets a quantity out of range through, so that tests find what the sum should refuse by its field. */
    static Outcome strictly(Sum sum, Map<String, String> written, LengthUnit shopUnit) {
        try {
            LengthUnit unit = unit(written, shopUnit);
            refuseUnknown(sum, written);
            var taken = new LinkedHashMap<String, String>();
            Asked asked = read(sum, written, unit, taken);
            var working = new Working();
            Answer answer = sum.work(asked, working);
            return new Outcome.Answered(sum, taken, answer, working.steps(), working.cautions());
        } catch (Refusal refusal) {
            return new Outcome.Refused(refusal.field(), refusal.say());
        }
    }

    private static LengthUnit unit(Map<String, String> written, LengthUnit shopUnit) {
        String text = written.getOrDefault(UNIT, "").trim();
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "" -> shopUnit;
            case "mm" -> LengthUnit.MILLIMETRE;
            case "in", "inch", "inches" -> LengthUnit.INCH;
            default -> throw new Refusal(UNIT, "'" + text + "' is not a unit for bare numbers: write mm or in.");
        };
    }

    private static void refuseUnknown(Sum sum, Map<String, String> written) {
        for (String name : written.keySet()) {
            if (!name.equals(UNIT)
                    && sum.fields().stream().noneMatch(field -> field.name().equals(name))) {
                var names = sum.fields().stream().map(Field::name).toList();
                throw new Refusal(
                        name, "'" + sum.name() + "' does not ask for this; it takes " + String.join(", ", names) + ".");
            }
        }
    }

    private static Asked read(Sum sum, Map<String, String> written, LengthUnit unit, Map<String, String> taken) {
        var values = new LinkedHashMap<Field<?>, Object>();
        for (Field<?> field : sum.fields()) {
            readField(field, written.getOrDefault(field.name(), "").trim(), unit, values, taken);
        }
        return new Asked(values, unit);
    }

    private static <T> void readField(
            Field<T> field, String given, LengthUnit unit, Map<Field<?>, Object> values, Map<String, String> taken) {
        String text = given.isEmpty() && field.fallback() != null ? field.fallback() : given;
        if (text.isEmpty()) {
            if (field.required()) {
                throw Refusal.of(field, field.label() + " is needed: " + field.hint());
            }
            return;
        }
        if (text.length() > MOST_CHARACTERS) {
            throw Refusal.of(field, "this is longer than anything that can be read here: " + field.hint());
        }
        try {
            T value = field.kind().read(text, unit);
            values.put(field, value);
            taken.put(field.name(), field.kind().echo(value, unit));
        } catch (Unreadable unreadable) {
            throw Refusal.of(field, unreadable.say());
        }
    }
}
