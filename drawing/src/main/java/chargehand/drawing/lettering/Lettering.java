package chargehand.drawing.lettering;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Letters of one weight and size.
 *
 * @param weight how heavy
 * @param size the size of the type, the em (mm), more than zero; capitals are {@value #CAPITALS} of it
 */
public record Lettering(Weight weight, double size) {
    /** The height of capitals and figures as a part of the type size (the font's own OS/2 table). */
    public static final double CAPITALS = 0.698;

    /** From one base line to the next, as a part of the type size. */
    private static final double LINE = 1.3;

    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final double MM_PER_POINT = 25.4 / 72;

    /** What stands for a character that the font has no shape for. */
    private static final int STAND_IN = '?';

    public Lettering {
        if (!(size > 0 && size < 1000)) {
            throw new IllegalArgumentException("a type size lies above 0 and below 1000 mm, not " + size);
        }
    }

    /** Regular letters whose capitals are so high (mm), as ISO 3098 counts: 2.5, 3.5, 5, 7. */
    public static Lettering height(double capitalsMm) {
        return new Lettering(Weight.REGULAR, capitalsMm / CAPITALS);
    }

    /** Regular letters of so many points, as printers count. */
    public static Lettering points(double points) {
        return new Lettering(Weight.REGULAR, points * MM_PER_POINT);
    }

    public Lettering semiBold() {
        return new Lettering(Weight.SEMI_BOLD, size);
    }

    public Lettering bold() {
        return new Lettering(Weight.BOLD, size);
    }

    /** The height of capitals and figures (mm). */
    public double capitals() {
        return size * CAPITALS;
    }

    /** From one base line to the next (mm). */
    public double linePitch() {
        return size * LINE;
    }

    /** How wide these words are (mm), without kerning. */
    public double width(String words) {
        Advances advances = Advances.of(weight);
        return size * words.codePoints().mapToDouble(advances::of).sum();
    }

    /** The words with every character that the font has no shape for replaced by a question mark. */
    public String shown(String words) {
        Advances advances = Advances.of(weight);
        StringBuilder shown = new StringBuilder();
        words.codePoints()
                .map(character -> advances.has(character) ? character : STAND_IN)
                .forEach(shown::appendCodePoint);
        return shown.toString();
    }

    /**
     * The words in lines no wider than {@code width} (mm), broken at spaces; a single word that is too wide is broken
     * anywhere. Words with nothing in them make no line.
     */
    public List<String> wrap(String words, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : SPACES.splitAsStream(words.strip()).toList()) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = broken(word, width, lines);
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** Adds the full lines of a word that is too wide and returns what is left of it. */
    private String broken(String word, double width, List<String> lines) {
        String rest = word;
        while (width(rest) > width && rest.codePointCount(0, rest.length()) > 1) {
            int end = rest.offsetByCodePoints(0, 1);
            while (width(rest.substring(0, rest.offsetByCodePoints(end, 1))) <= width) {
                end = rest.offsetByCodePoints(end, 1);
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }
}
