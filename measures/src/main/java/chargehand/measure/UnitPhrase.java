package chargehand.measure;

/**
 * The words after a number, in the one spelling by which units are looked up: {@code N·m}, {@code N m}, {@code Nm} and
 * {@code newton metres} are all {@code nm}; {@code rev per min} and {@code rev/min} are one; {@code mm²}, {@code mm^2}
 * and {@code mm2} are one. Capitals do not count, for no kind has two units that differ in them alone.
 */
final class UnitPhrase {
    private UnitPhrase() {}

    /** Reads everything that is left as one phrase; empty when nothing is left. */
    static String take(Tokens tokens) {
        var phrase = new StringBuilder();
        while (!tokens.atEnd()) {
            Token token = tokens.ahead(0).orElseThrow();
            tokens.skip(1);
            phrase.append(isJoint(token) && !tokens.atEnd() ? "" : shortened(token.small()));
        }
        return phrase.toString();
    }

    /** The phrase of a spelling in a table of units. */
    static String of(String spelling) {
        return take(Tokens.of(spelling, "a unit"));
    }

    private static boolean isJoint(Token token) {
        return token.isSign('·') || token.isSign('-') || token.isSign('^');
    }

    private static String shortened(String word) {
        return switch (word) {
            case "per" -> "/";
            case "square" -> "sq";
            case "cubic" -> "cu";
            case "millimetre", "millimetres" -> "mm";
            case "metre", "metres" -> "m";
            case "inch", "inches", "\"" -> "in";
            case "foot", "feet" -> "ft";
            case "newton", "newtons" -> "n";
            case "pound", "pounds", "lbs" -> "lb";
            case "kilogram", "kilograms", "kilo", "kilos" -> "kg";
            case "gram", "grams" -> "g";
            case "ounce", "ounces" -> "oz";
            case "tons" -> "ton";
            case "tonnes" -> "tonne";
            case "watt", "watts" -> "w";
            case "litre", "litres" -> "l";
            case "second", "seconds", "sec" -> "s";
            case "minute", "minutes" -> "min";
            case "revs", "revolutions" -> "rev";
            case "thread", "thds" -> "threads";
            default -> word;
        };
    }
}
