package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.Feature;
import chargehand.part.Hole;
import chargehand.part.Part;
import chargehand.part.Texture;
import chargehand.part.Tie;
import java.math.BigDecimal;
import java.util.List;

/** Writes a part as a file, keys in their usual order, nothing that is meant anyway. */
final class PartWriter {
    private static final Angle UP = Angle.degrees(0);

    private final YamlLines lines = new YamlLines();

    private PartWriter() {}

    static String write(Part part) {
        var writer = new PartWriter();
        writer.part(part);
        return writer.lines.text();
    }

    private void part(Part part) {
        lines.words("part", part.title());
        lines.wordsIfAny("drawing", part.drawing());
        lines.words("issue", part.issue());
        lines.value("unit", part.unit().symbol());
        lines.words("material", part.material());
        lines.wordsIfAny("duty", part.duty());
        lines.value("general", part.general().text());
        part.texture().ifPresent(this::texture);
        DraftingForm.write(part.drafting(), lines);
        switch (part.body()) {
            case Body.Turned turned -> new TurnedWriter(lines).write(turned);
            case Body.Block block -> block(block);
        }
        ties(part.ties());
        notes(part.notes());
    }

    private void texture(Texture texture) {
        lines.value(
                "texture",
                "Ra " + BigDecimal.valueOf(texture.ra()).stripTrailingZeros().toPlainString());
    }

    private void block(Body.Block block) {
        lines.begin("block");
        lines.value("length", SizeText.write(block.length()));
        lines.value("width", SizeText.write(block.width()));
        lines.value("thickness", SizeText.write(block.thickness()));
        lines.end();
        if (!block.holes().isEmpty()) {
            lines.begin("holes");
            for (int i = 0; i < block.holes().size(); i++) {
                hole(block.holes().get(i), BlockForm.defaultName(i + 1));
            }
            lines.end();
        }
        BlockCutForm.write(block.cuts(), lines);
    }

    private void hole(Hole hole, String defaultName) {
        lines.entry();
        switch (hole) {
            case Hole.Drilled drilled -> lines.value("drill", SizeText.write(drilled.diameter()));
            case Hole.Reamed reamed -> lines.value("ream", SizeText.write(reamed.diameter()));
            case Hole.Tapped tapped -> lines.value("tap", tapped.thread().designation());
            case Hole.Counterbored bored -> lines.value("counterbore", SizeText.write(bored.diameter()));
        }
        name(lines, hole.name(), defaultName);
        lines.value("x", SizeText.write(hole.x()));
        lines.value("y", SizeText.write(hole.y()));
        depth(lines, hole.depth());
        if (hole instanceof Hole.Counterbored bored) {
            lines.value("head", SizeText.write(bored.head())).value("head-depth", SizeText.write(bored.headDepth()));
        }
        lines.endEntry();
    }

    private void ties(List<Tie> ties) {
        if (!ties.isEmpty()) {
            lines.begin("ties");
            for (Tie tie : ties) {
                lines.entry().value("run-out", tie.runOut().text());
                lines.words("of", tie.of()).words("to", tie.to()).endEntry();
            }
            lines.end();
        }
    }

    private void notes(List<String> notes) {
        if (!notes.isEmpty()) {
            lines.begin("notes");
            notes.forEach(lines::wordsEntry);
            lines.end();
        }
    }

    static void name(YamlLines lines, String name, String defaultName) {
        if (!name.equals(defaultName)) {
            lines.words("name", name);
        }
    }

    static void depth(YamlLines lines, Depth depth) {
        switch (depth) {
            case Depth.Through() -> {}
            case Depth.Blind(var size) -> lines.value("depth", SizeText.write(size));
        }
    }

    static void made(YamlLines lines, Feature feature) {
        if (feature.isThere()) {
            lines.value("made", "already");
        }
    }

    static void around(YamlLines lines, Angle angle) {
        if (!angle.equals(UP)) {
            lines.value("around", AngleFigures.exact(angle));
        }
    }

    static void edge(YamlLines lines, String key, Edge edge) {
        if (!(edge instanceof Edge.Plain)) {
            lines.value(key, EdgeText.write(edge));
        }
    }
}
