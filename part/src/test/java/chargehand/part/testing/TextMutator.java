package chargehand.part.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Spoils a text in the ways that people, editors and transfers do. The same seed spoils it the same way. */
public final class TextMutator {
    private static final List<String> SNIPPETS = List.of(
            "&a ",
            "*a",
            "!!int ",
            "[",
            "]",
            "{",
            "}",
            ": ",
            "- ",
            "#",
            "\t",
            "\"",
            "'",
            "|",
            ">",
            "%",
            "@",
            "`",
            "---\n",
            "...\n",
            "<<: ",
            "? ",
            "~",
            "null",
            "true",
            "1e999",
            "NaN",
            "Infinity",
            "-1",
            "0",
            "1/0",
            "9999999999999",
            "0x1F",
            "1_000",
            "20,6",
            "1,500",
            "±",
            "°",
            "µm",
            "M",
            "H7",
            "\u0000",
            "\u0007",
            "\uFEFF",
            "\u2028",
            "\uD800",
            "𝟙",
            "através",
            "from: A",
            "length: 1 m",
            "depth: -5",
            "through: false",
            "round: 1e-9");

    private static final Pattern SIZE = Pattern.compile("(?<=: |from |chamfer |radius |[A-Z]|x)[.0-9][0-9./]*(?=\\D)");

    private static final List<String> OTHER_SIZES = List.of(
            "0",
            "0.01",
            "0.3",
            "2.5",
            "7 1/2",
            "33/64",
            "1e-7",
            "-4",
            "-900 m",
            "900 m",
            "90 m",
            "0.000001",
            "45",
            "90",
            "179",
            "10 ±900 m",
            "10 ±90 mm",
            "20 H7",
            "20 h7",
            "(20)");

    private final Random random;

    public TextMutator(long seed) {
        this.random = new Random(seed);
    }

    /** The text with one to three things wrong. */
    public String spoiled(String text) {
        String spoiled = text;
        for (int i = random.nextInt(3); i >= 0; i--) {
            spoiled = once(spoiled);
        }
        return spoiled;
    }

    /** The text with one to three of its sizes changed, its layout kept. */
    public String resized(String text) {
        String resized = text;
        for (int i = random.nextInt(3); i >= 0; i--) {
            resized = withOtherSize(resized);
        }
        return resized;
    }

    private String withOtherSize(String text) {
        List<MatchResult> sizes = SIZE.matcher(text).results().toList();
        if (sizes.isEmpty()) {
            return text;
        }
        MatchResult size = sizes.get(random.nextInt(sizes.size()));
        String other = random.nextBoolean()
                ? Integer.toString(random.nextInt(100))
                : OTHER_SIZES.get(random.nextInt(OTHER_SIZES.size()));
        return text.substring(0, size.start()) + other + text.substring(size.end());
    }

    private String once(String text) {
        return switch (random.nextInt(7)) {
            case 0 -> withLines(text, this::withoutOne);
            case 1 -> withLines(text, this::withOneTwice);
            case 2 -> withLines(text, this::withTwoSwapped);
            case 3 -> withLines(text, this::withOneMoved);
            case 4 -> replaced(text, 1 + random.nextInt(6), "");
            case 5 -> replaced(text, random.nextInt(4), SNIPPETS.get(random.nextInt(SNIPPETS.size())));
            default -> random.nextInt(4) == 0 ? text.substring(0, place(text)) : withValue(text);
        };
    }

    private interface LineChange {
        void apply(List<String> lines);
    }

    private static String withLines(String text, LineChange change) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (!lines.isEmpty()) {
            change.apply(lines);
        }
        return String.join("\n", lines) + "\n";
    }

    private void withoutOne(List<String> lines) {
        lines.remove(random.nextInt(lines.size()));
    }

    private void withOneTwice(List<String> lines) {
        lines.add(random.nextInt(lines.size()), lines.get(random.nextInt(lines.size())));
    }

    private void withTwoSwapped(List<String> lines) {
        int one = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        String kept = lines.get(one);
        lines.set(one, lines.get(other));
        lines.set(other, kept);
    }

    private void withOneMoved(List<String> lines) {
        int one = random.nextInt(lines.size());
        lines.set(one, " ".repeat(random.nextInt(4)) + lines.get(one).strip());
    }

    /** One line's value replaced by something else. */
    private String withValue(String text) {
        return withLines(text, lines -> {
            int one = random.nextInt(lines.size());
            String line = lines.get(one);
            int colon = line.indexOf(':');
            String snippet = SNIPPETS.get(random.nextInt(SNIPPETS.size()));
            lines.set(one, colon < 0 ? snippet : line.substring(0, colon + 1) + " " + snippet);
        });
    }

    private String replaced(String text, int count, String by) {
        int from = place(text);
        return text.substring(0, from) + by + text.substring(Math.min(text.length(), from + count));
    }

    private int place(String text) {
        return random.nextInt(text.length() + 1);
    }
}
