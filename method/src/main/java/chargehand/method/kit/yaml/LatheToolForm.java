package chargehand.method.kit.yaml;

import chargehand.method.kit.LatheTool;
import chargehand.method.kit.LatheTool.Edge;
import chargehand.method.kit.LatheTool.Hand;
import chargehand.method.kit.LatheTool.Side;
import java.util.List;
import java.util.Optional;

/** Reads one tool of a lathe. */
final class LatheToolForm {
    /** The kinds of lathe tools that can be described. */
    static final List<String> KINDS = List.of(
            "knife",
            "round-nose",
            "chamfering",
            "boring-bar",
            "parting",
            "grooving",
            "screw-cutting",
            "slotting-bar",
            "inside-grooving");

    private static final List<String> KEYS = List.of(
            "edge",
            "hand",
            "nose",
            "radius",
            "least-bore",
            "reach",
            "width",
            "depth",
            "angle",
            "side",
            "pitches",
            "widths");

    private LatheToolForm() {}

    static Optional<LatheTool> read(KitForm row) {
        String kind = row.kind(KINDS, KEYS);
        return kind.isEmpty() ? Optional.empty() : tool(row, kind);
    }

    private static Optional<LatheTool> tool(KitForm row, String kind) {
        String name = row.nameOf(kind);
        Edge edge = row.word("edge", Edge.HIGH_SPEED_STEEL);
        return switch (kind) {
            case "knife" -> knife(row, name, edge);
            case "round-nose" -> roundNose(row, name, edge);
            case "chamfering" -> row.build(() -> new LatheTool.Chamfering(name, edge));
            case "boring-bar" -> boringBar(row, name, edge);
            case "parting" -> parting(row, name, edge);
            case "grooving" -> grooving(row, name, edge);
            case "screw-cutting" -> screwCutter(row, name, edge);
            case "slotting-bar" -> slotting(row, name, edge);
            case "inside-grooving" -> insideGrooving(row, name, edge);
            default -> throw new IllegalStateException("no lathe tool is written as " + kind);
        };
    }

    private static Optional<LatheTool> knife(KitForm row, String name, Edge edge) {
        Hand hand = row.word("hand", Hand.class);
        var nose = row.lengthOrNone("nose");
        return row.build(() -> new LatheTool.Knife(name, edge, hand, nose));
    }

    private static Optional<LatheTool> roundNose(KitForm row, String name, Edge edge) {
        var radius = row.length("radius");
        return row.build(() -> new LatheTool.RoundNose(name, edge, radius));
    }

    private static Optional<LatheTool> boringBar(KitForm row, String name, Edge edge) {
        var least = row.length("least-bore");
        var reach = row.length("reach");
        return row.build(() -> new LatheTool.BoringBar(name, edge, least, reach));
    }

    private static Optional<LatheTool> parting(KitForm row, String name, Edge edge) {
        var width = row.length("width");
        var depth = row.length("depth");
        return row.build(() -> new LatheTool.Parting(name, edge, width, depth));
    }

    private static Optional<LatheTool> grooving(KitForm row, String name, Edge edge) {
        var width = row.length("width");
        var depth = row.length("depth");
        return row.build(() -> new LatheTool.Grooving(name, edge, width, depth));
    }

    private static Optional<LatheTool> slotting(KitForm row, String name, Edge edge) {
        var least = row.length("least-bore");
        var reach = row.length("reach");
        var widths = row.span("widths");
        return row.build(() -> new LatheTool.Slotting(name, edge, least, reach, widths));
    }

    private static Optional<LatheTool> insideGrooving(KitForm row, String name, Edge edge) {
        var width = row.length("width");
        var depth = row.length("depth");
        var least = row.length("least-bore");
        var reach = row.length("reach");
        return row.build(() -> new LatheTool.InsideGrooving(name, edge, width, depth, least, reach));
    }

    private static Optional<LatheTool> screwCutter(KitForm row, String name, Edge edge) {
        var angle = row.angle("angle");
        Side side = row.word("side", Side.class);
        var pitches = row.pitches("pitches");
        return row.build(() -> new LatheTool.ScrewCutter(name, edge, angle, side, pitches));
    }
}
