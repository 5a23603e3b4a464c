package chargehand.trade.holding;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** What a shop may own to hold work with, so far as it is a way out where a chuck does not sit true. */
public enum OwnedHolding {
    /** Three jaws that close together. */
    THREE_JAW("three-jaw"),
    /** Four jaws that move singly. */
    FOUR_JAW("four-jaw"),
    /** Four jaws that close together. */
    FOUR_JAW_TOGETHER("self-centring four-jaw"),
    /** Six jaws that close together. */
    SIX_JAW("six-jaw"),
    /** Jaws that can be bored. */
    SOFT_JAWS("soft jaws"),
    /** Mandrels between centres. */
    MANDREL("mandrel");

    private final String word;

    OwnedHolding(String word) {
        this.word = word;
    }

    /** What it is written as, such as {@code four-jaw}. */
    public String word() {
        return word;
    }

    /** The chuck whose jaws, 3, 4 or 6, close together. */
    public static OwnedHolding together(int jaws) {
        return switch (jaws) {
            case 3 -> THREE_JAW;
            case 4 -> FOUR_JAW_TOGETHER;
            case 6 -> SIX_JAW;
            default -> throw new IllegalArgumentException("a chuck has 3, 4 or 6 jaws, not " + jaws);
        };
    }

    static Map<String, OwnedHolding> words() {
        var words = new LinkedHashMap<String, OwnedHolding>();
        Arrays.stream(values()).forEach(holding -> words.put(holding.word, holding));
        return words;
    }

    static String hint() {
        return Arrays.stream(values()).map(OwnedHolding::word).collect(Collectors.joining(", "));
    }
}
