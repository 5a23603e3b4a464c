package chargehand.part.yaml;

import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads a block with its holes. */
final class BlockForm {
    static final List<String> KINDS = List.of("drill", "ream", "tap", "counterbore");
    private static final List<String> KEYS =
            List.of("drill", "ream", "tap", "counterbore", "name", "x", "y", "depth", "through", "head", "head-depth");

    private BlockForm() {}

    /** Reads the block of a part out of the form of the whole file, its holes and cuts read already. */
    static Optional<Body> read(Form part, List<Hole> holes, List<BlockCut> cuts) {
        return part.form("block").flatMap(form -> {
            Size length = Values.size(form, "length");
            Size width = Values.size(form, "width");
            Size thickness = Values.size(form, "thickness");
            return form.build(() -> new Body.Block(length, width, thickness, holes, cuts));
        });
    }

    static String defaultName(int number) {
        return "hole " + number;
    }

    static Optional<Hole> hole(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> hole(form, number, kind));
    }

    private static Optional<Hole> hole(Form form, int number, String kind) {
        String name = form.findText("name").orElse(defaultName(number));
        Size x = Values.size(form, "x");
        Size y = Values.size(form, "y");
        Depth depth = Values.depthOrThrough(form);
        if (kind.equals("tap")) {
            var thread = Values.thread(form, kind);
            return form.build(() -> new Hole.Tapped(name, x, y, depth, thread));
        }
        if (kind.equals("counterbore")) {
            Size diameter = Values.drill(form, kind);
            Size head = Values.size(form, "head");
            Size headDepth = Values.size(form, "head-depth");
            return form.build(() -> new Hole.Counterbored(name, x, y, depth, diameter, head, headDepth));
        }
        boolean drilled = kind.equals("drill");
        Size diameter = drilled ? Values.drill(form, kind) : Values.size(form, kind);
        return drilled
                ? form.build(() -> new Hole.Drilled(name, x, y, depth, diameter))
                : form.build(() -> new Hole.Reamed(name, x, y, depth, diameter));
    }
}
