package chargehand.measure;

import java.text.Normalizer;

/**
 * Folds the many signs that keyboards, spreadsheets and old documents bring for one thing into one plain sign each:
 * every dash to {@code -}, every prime to {@code '} or {@code "}, every odd space to a space, {@code ⅜} to {@code 3/8}.
 * A glyph fraction or raised figure that touches a plain figure is parted from it, so {@code 1⅜} becomes {@code 1 3/8}
 * and never {@code 13/8}.
 */
final class Spelling {
    private static final char FRACTION_SLASH = '\u2044';
    private static final char FULL_WIDTH_FIRST = '\uFF01';
    private static final char FULL_WIDTH_LAST = '\uFF5E';
    private static final int FULL_WIDTH_SHIFT = FULL_WIDTH_FIRST - '!';

    /** What a character counts as when deciding whether it must be parted from its neighbour. */
    private enum Figure {
        NONE,
        PLAIN,
        RAISED,
        FRACTION
    }

    private final StringBuilder out = new StringBuilder();
    private Figure before = Figure.NONE;

    private Spelling() {}

    /** The text in plain signs. */
    static String plain(String text) {
        var spelling = new Spelling();
        text.chars().forEach(c -> spelling.add((char) c));
        return spelling.out.toString().replace("''", "\"");
    }

    private void add(char c) {
        String folded = folded(c);
        Figure figure = figure(c, folded);
        boolean touches = before != Figure.NONE && figure != Figure.NONE;
        if (touches && (figure != before || figure == Figure.FRACTION)) {
            out.append(' ');
        }
        out.append(folded);
        before = figure;
    }

    private static Figure figure(char c, String folded) {
        if (c >= '0' && c <= '9') {
            return Figure.PLAIN;
        }
        if (Character.getType(c) != Character.OTHER_NUMBER) {
            return Figure.NONE;
        }
        return folded.indexOf('/') >= 0 ? Figure.FRACTION : Figure.RAISED;
    }

    private static String folded(char c) {
        return switch (c) {
            case '\u2212', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\uFE63' -> "-";
            case '\u2032', '\u2018', '\u2019', '\u02B9', '\u00B4', '`' -> "'";
            case '\u2033', '\u201C', '\u201D', '\u02BA' -> "\"";
            case '\u00D7', '\u2715', '\u2A2F' -> "x";
            case '\u22C5', '\u2219', '\u2022', '*' -> "\u00B7";
            case FRACTION_SLASH, '\u2215' -> "/";
            case '\u03BC' -> "\u00B5";
            case '\u00BA', '\u02DA' -> "°";
            case '\u2300', '\u2205', '\u00F8' -> "Ø";
            case '\u2103' -> "°C";
            case '\u2109' -> "°F";
            case '\u200B', '\u2060', '\uFEFF', '\u00AD' -> "";
            default -> foldedByKind(c);
        };
    }

    private static String foldedByKind(char c) {
        if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
            return " ";
        }
        if (c >= FULL_WIDTH_FIRST && c <= FULL_WIDTH_LAST) {
            return String.valueOf((char) (c - FULL_WIDTH_SHIFT));
        }
        if (Character.getType(c) == Character.OTHER_NUMBER) {
            return Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC).replace(FRACTION_SLASH, '/');
        }
        return String.valueOf(c);
    }
}
