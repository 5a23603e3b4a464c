package chargehand.drawing.svg;

import java.util.List;
import java.util.stream.Collectors;

/** Numbers and words as SVG spells them. */
final class SvgText {
    private static final long PARTS = 1000;

    private SvgText() {}

    /** A number to the nearest thousandth, without needless digits. */
    static String number(double value) {
        long thousandths = Math.round(value * PARTS);
        String sign = thousandths < 0 ? "-" : "";
        long whole = Math.abs(thousandths) / PARTS;
        long rest = Math.abs(thousandths) % PARTS;
        if (rest == 0) {
            return sign + whole;
        }
        String decimals = Long.toString(PARTS + rest).substring(1);
        return sign + whole + "." + decimals.replaceAll("0+$", "");
    }

    static String numbers(List<Double> values) {
        return values.stream().map(SvgText::number).collect(Collectors.joining(" "));
    }

    /** Words safe within an element or a quoted attribute; what XML cannot carry becomes a space. */
    static String escaped(String words) {
        StringBuilder safe = new StringBuilder();
        words.codePoints().forEach(character -> escape(character, safe));
        return safe.toString();
    }

    private static void escape(int character, StringBuilder safe) {
        switch (character) {
            case '&' -> safe.append("&amp;");
            case '<' -> safe.append("&lt;");
            case '>' -> safe.append("&gt;");
            case '"' -> safe.append("&quot;");
            default -> safe.appendCodePoint(allowed(character) ? character : ' ');
        }
    }

    private static boolean allowed(int character) {
        return (character >= ' ' && character <= 0xD7FF)
                || (character >= 0xE000 && character <= 0xFFFD)
                || character >= 0x10000;
    }
}
