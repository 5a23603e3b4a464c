package chargehand.trade.sum;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** One of some words. The first word of a value, in the order given, is the one said back. */
record Choice<T>(String name, Map<String, T> words) implements Kind<T> {
    private static final int MOST_SAID_BACK = 40;

    Choice {
        words = new LinkedHashMap<>(words);
    }

    @Override
    public T read(String written, LengthUnit unit) {
        T value = words.get(written.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
        if (value == null) {
            String shown = written.length() <= MOST_SAID_BACK ? written : written.substring(0, MOST_SAID_BACK) + "…";
            throw new Unreadable("'" + shown + "' is not one of the words for this: write "
                    + String.join(", ", words.keySet()) + ".");
        }
        return value;
    }

    @Override
    public String echo(T value) {
        return words.entrySet().stream()
                .filter(entry -> entry.getValue().equals(value))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(value + " is not one of " + words.values()));
    }
}
