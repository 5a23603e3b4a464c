package chargehand.part.testing;

import java.util.ArrayList;
import java.util.List;

/** Builds the text of a small part file, one line an entry: {@code outside("round: 20, length: 30")}. */
public final class PartText {
    private final List<String> head = new ArrayList<>();
    private final List<String> outside = new ArrayList<>();
    private final List<String> inside = new ArrayList<>();
    private final List<String> across = new ArrayList<>();
    private final List<String> inBores = new ArrayList<>();
    private final List<String> onEnds = new ArrayList<>();
    private final List<String> holes = new ArrayList<>();
    private final List<String> cuts = new ArrayList<>();
    private final List<String> ties = new ArrayList<>();

    private PartText(String unit, String general) {
        head.add("part: Trial piece");
        head.add("unit: " + unit);
        head.add("material: EN8");
        head.add("general: " + general);
    }

    public static PartText mm() {
        return new PartText("mm", "±0.1");
    }

    public static PartText inches() {
        return new PartText("in", "±.005");
    }

    public PartText line(String line) {
        head.add(line);
        return this;
    }

    public PartText outside(String... sections) {
        outside.addAll(List.of(sections));
        return this;
    }

    public PartText inside(String... bores) {
        inside.addAll(List.of(bores));
        return this;
    }

    public PartText across(String... features) {
        across.addAll(List.of(features));
        return this;
    }

    public PartText inBores(String... features) {
        inBores.addAll(List.of(features));
        return this;
    }

    public PartText onEnds(String... features) {
        onEnds.addAll(List.of(features));
        return this;
    }

    public PartText holes(String... all) {
        holes.addAll(List.of(all));
        return this;
    }

    public PartText cuts(String... all) {
        cuts.addAll(List.of(all));
        return this;
    }

    public PartText ties(String... all) {
        ties.addAll(List.of(all));
        return this;
    }

    @Override
    public String toString() {
        var text = new StringBuilder();
        head.forEach(line -> text.append(line).append('\n'));
        list(text, "outside", outside);
        list(text, "inside", inside);
        list(text, "across", across);
        list(text, "in-bores", inBores);
        list(text, "on-ends", onEnds);
        list(text, "holes", holes);
        list(text, "cuts", cuts);
        list(text, "ties", ties);
        return text.toString();
    }

    private static void list(StringBuilder text, String key, List<String> entries) {
        if (!entries.isEmpty()) {
            text.append(key).append(":\n");
            entries.forEach(entry -> text.append("  - {").append(entry).append("}\n"));
        }
    }
}
