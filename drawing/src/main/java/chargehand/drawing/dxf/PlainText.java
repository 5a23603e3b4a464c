package chargehand.drawing.dxf;

import java.util.Locale;

/**
 * Words as DXF for release 12 carries them: ASCII alone. The signs of the trade have their own spellings there; what has
 * none is written by its number, which later programs read.
 */
final class PlainText {
    /** Two of them would begin one of the spellings below. */
    private static final String TWO_PERCENT = "%%";

    private PlainText() {}

    static String of(String words) {
        StringBuilder plain = new StringBuilder();
        words.replace(TWO_PERCENT, "% %").codePoints().forEach(character -> plain.append(spelt(character)));
        return plain.toString();
    }

    private static String spelt(int character) {
        return switch (character) {
            case 'Ø', '⌀' -> "%%c";
            case '°' -> "%%d";
            case '±' -> "%%p";
            case '×' -> "x";
            case '–', '—', '−' -> "-";
            case '‘', '’' -> "'";
            case '“', '”' -> "\"";
            case '\u00a0' -> " ";
            default -> numbered(character);
        };
    }

    private static String numbered(int character) {
        if (character >= ' ' && character <= '~') {
            return Character.toString(character);
        }
        if (Character.isISOControl(character)) {
            return " ";
        }
        return character <= 0xffff ? String.format(Locale.ROOT, "\\U+%04X", character) : "?";
    }
}
