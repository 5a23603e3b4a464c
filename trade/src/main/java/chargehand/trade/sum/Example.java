package chargehand.trade.sum;

import java.util.Map;

/**
 * One ask as a person would write it, with what it is about.
 *
 * @param about what the example shows, a few words
 * @param ask field names to what is written in them
 */
public record Example(String about, Map<String, String> ask) {
    public Example {
        ask = Map.copyOf(ask);
    }
}
