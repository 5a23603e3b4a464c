package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Edge;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Edges as a turner says them: {@code chamfer 1/16}, {@code chamfer 1 x 30°}, {@code radius 3},
 * {@code weld V 6 x 30° gap 2}, {@code plain}.
 */
final class EdgeText {
    private static final Angle USUAL = Angle.degrees(45);
    private static final Pattern WELD = Pattern.compile("(?i)(v|bevel)\\s+(.+?)\\s*[x×]\\s*(.+?)(?:\\s+gap\\s+(.+))?");
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
            case "weld" -> weld(text, rest, bareUnit);
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

    private static Edge weld(String text, String rest, LengthUnit bareUnit) {
        Matcher matcher = WELD.matcher(rest);
        if (!matcher.matches()) {
            throw unreadable(text);
        }
        Edge.Joint joint = matcher.group(1).equalsIgnoreCase("v") ? Edge.Joint.SINGLE_V : Edge.Joint.SINGLE_BEVEL;
        return new Edge.WeldPreparation(
                joint,
                Lengths.read(matcher.group(2), bareUnit),
                Notations.ANGLE.read(matcher.group(3), bareUnit),
                Optional.ofNullable(matcher.group(4)).map(gap -> Lengths.read(gap, bareUnit)));
    }

    private static Unreadable unreadable(String text) {
        String shown = text.length() <= 40 ? text : text.substring(0, 40) + "…";
        return new Unreadable("'" + shown
                + "' is no edge: write chamfer 1/16, chamfer 1 mm x 30°, radius 3 mm, weld V 6 mm x 30° or plain.");
    }

    /** Writes an edge so that {@link #read} gives the same one back. */
    static String write(Edge edge) {
        return switch (edge) {
            case Edge.Plain() -> "plain";
            case Edge.Radius(var radius) -> "radius " + radius.text();
            case Edge.WeldPreparation(var joint, var depth, var angle, var gap) ->
                "weld " + joint.text() + " " + depth.text() + " x " + AngleFigures.exact(angle)
                        + gap.map(size -> " gap " + size.text()).orElse("");
            case Edge.Chamfer(var length, var angle) ->
                "chamfer " + length.text() + (angle.equals(USUAL) ? "" : " x " + AngleFigures.exact(angle));
        };
    }
}
