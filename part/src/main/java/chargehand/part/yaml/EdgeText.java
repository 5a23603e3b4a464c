package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Edge;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Edges as a turner says them: {@code chamfer 1/16}, {@code chamfer 1 x 30°}, {@code radius 3}, {@code plain}. */
final class EdgeText {
    private static final Angle USUAL = Angle.degrees(45);
    private static final Pattern ANGLED = Pattern.compile("(.+?)\\s*[x×]\\s*(.+)");

    private EdgeText() {}

    /**
     * Reads an edge.
     *
     * @throws Unreadable saying what was found and what would do
     */
    static Edge read(String text, LengthUnit bareUnit) {
        if (text.length() > SizeText.LONGEST) {
            throw unreadable(text);
        }
        String[] words = text.strip().split("\\s+", 2);
        String rest = words.length > 1 ? words[1] : "";
        return switch (words[0].toLowerCase(Locale.ROOT)) {
            case "chamfer" -> chamfer(rest, bareUnit);
            case "radius" -> new Edge.Radius(Lengths.read(rest, bareUnit));
            case "plain" -> plain(text, rest);
            default -> throw unreadable(text);
        };
    }

    private static Edge plain(String text, String rest) {
        if (!rest.isEmpty()) {
            throw unreadable(text);
        }
        return new Edge.Plain();
    }

    private static Edge chamfer(String rest, LengthUnit bareUnit) {
        Matcher angled = ANGLED.matcher(rest);
        if (angled.matches()) {
            Written length = Lengths.read(angled.group(1), bareUnit);
            return new Edge.Chamfer(length, Notations.ANGLE.read(angled.group(2), bareUnit));
        }
        return new Edge.Chamfer(Lengths.read(rest, bareUnit), USUAL);
    }

    private static Unreadable unreadable(String text) {
        String shown = text.length() <= 40 ? text : text.substring(0, 40) + "…";
        return new Unreadable(
                "'" + shown + "' is no edge: write chamfer 1/16, chamfer 1 mm x 30°, radius 3 mm or plain.");
    }

    /** Writes an edge so that {@link #read} gives the same one back. */
    static String write(Edge edge) {
        return switch (edge) {
            case Edge.Plain() -> "plain";
            case Edge.Radius(var radius) -> "radius " + radius.text();
            case Edge.Chamfer(var length, var angle) ->
                "chamfer " + length.text() + (angle.equals(USUAL) ? "" : " x " + AngleFigures.exact(angle));
        };
    }
}
