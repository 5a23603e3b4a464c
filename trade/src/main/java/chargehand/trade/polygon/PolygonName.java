package chargehand.trade.polygon;

import chargehand.measure.Unreadable;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a shape is called. */
final class PolygonName {
    private static final Map<String, Integer> WORDS = Map.ofEntries(
            Map.entry("triangle", 3),
            Map.entry("square", 4),
            Map.entry("sq", 4),
            Map.entry("pentagon", 5),
            Map.entry("hexagon", 6),
            Map.entry("hex", 6),
            Map.entry("heptagon", 7),
            Map.entry("octagon", 8),
            Map.entry("oct", 8),
            Map.entry("nonagon", 9),
            Map.entry("decagon", 10),
            Map.entry("dodecagon", 12));
    private static final Pattern NUMBERED =
            Pattern.compile("(?:sides|flats|n)?\\s*[=:]?\\s*(\\d{1,3})\\s*(?:sides|flats|sided)?");

    private PolygonName() {}

    static Polygon parse(String written) {
        String plain = written.trim().toLowerCase(Locale.ROOT);
        Integer named = WORDS.get(plain);
        return named != null ? new Polygon(named) : numbered(plain);
    }

    private static Polygon numbered(String plain) {
        Matcher numbered = NUMBERED.matcher(plain);
        if (!numbered.matches()) {
            throw new Unreadable("this is not a shape with flats: write hexagon, square, octagon or sides=5.");
        }
        int sides = Integer.parseInt(numbered.group(1));
        if (sides < Polygon.FEWEST || sides > Polygon.MOST) {
            throw new Unreadable(
                    "a shape has from " + Polygon.FEWEST + " to " + Polygon.MOST + " flats, not " + sides + ".");
        }
        return new Polygon(sides);
    }
}
