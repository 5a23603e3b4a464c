package chargehand.part.yaml;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Writes keys, values and lists as YAML lines, quoting what would otherwise be read as something else. */
final class YamlLines {
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}0-9.(+±Ø/][^\\p{Cntrl}\\u0085\\u2028\\u2029\\uFEFF]*");
    private static final int STEP = 2;
    private static final Pattern NUMBER = Pattern.compile("[0-9.+-][0-9.,_xoeE+-]*");
    private static final Set<String> WORDS_WITH_A_MEANING =
            Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

    private final StringBuilder out = new StringBuilder();
    private int indent;
    private boolean dashed;

    /** A key with a value that is read as a size, a count or the like. */
    YamlLines value(String key, String text) {
        return line(key, isPlain(text) ? text : quoted(text));
    }

    /** A key with words, kept from being taken for a number by other readers. */
    YamlLines words(String key, String text) {
        return line(key, wordsOf(text));
    }

    /** A key with words, left out where there are none. */
    YamlLines wordsIfAny(String key, String text) {
        return text.isEmpty() ? this : words(key, text);
    }

    /** A key under which more keys or a list follow, until {@link #end}. */
    YamlLines begin(String key) {
        start().append(key).append(":\n");
        indent += STEP;
        return this;
    }

    YamlLines end() {
        indent -= STEP;
        return this;
    }

    /** Begins an entry of a list; the keys that follow belong to it until {@link #endEntry}. */
    YamlLines entry() {
        dashed = true;
        indent += STEP;
        return this;
    }

    YamlLines endEntry() {
        indent -= STEP;
        return this;
    }

    /** An entry of a list that is words alone. */
    YamlLines wordsEntry(String text) {
        out.append(" ".repeat(indent)).append("- ").append(wordsOf(text)).append('\n');
        return this;
    }

    String text() {
        return out.toString();
    }

    private YamlLines line(String key, String written) {
        start().append(key).append(": ").append(written).append('\n');
        return this;
    }

    private StringBuilder start() {
        out.append(" ".repeat(dashed ? indent - STEP : indent)).append(dashed ? "- " : "");
        dashed = false;
        return out;
    }

    private static String wordsOf(String text) {
        boolean taken = NUMBER.matcher(text).matches() || WORDS_WITH_A_MEANING.contains(text.toLowerCase(Locale.ROOT));
        return isPlain(text) && !taken ? text : quoted(text);
    }

    private static boolean isPlain(String text) {
        return PLAIN.matcher(text).matches()
                && text.equals(text.strip())
                && !text.contains(": ")
                && !text.contains(" #")
                && !text.endsWith(":");
    }

    private static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        text.chars().forEach(c -> quoted.append(escaped((char) c)));
        return quoted.append('"').toString();
    }

    private static String escaped(char c) {
        return switch (c) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\t' -> "\\t";
            default ->
                c < ' ' || c == 0x7F || (c >= 0x80 && c < 0xA0) || c == '\u2028' || c == '\u2029' || c == '\uFEFF'
                        ? String.format(Locale.ROOT, "\\u%04X", (int) c)
                        : String.valueOf(c);
        };
    }
}
