package chargehand.part.yaml;

import chargehand.measure.Unreadable;
import chargehand.part.BlockCut;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads and writes what is milled into a block. */
final class BlockCutForm {
    static final List<String> KINDS = List.of("slot", "step");
    private static final List<String> KEYS =
            List.of("slot", "step", "name", "along", "at", "depth", "from", "length", "side");

    private BlockCutForm() {}

    static Optional<BlockCut> read(Form form, int number) {
        return form.oneOf(KINDS, KEYS).flatMap(kind -> kind.equals("slot") ? slot(form, number) : step(form, number));
    }

    static String defaultName(BlockCut cut, int number) {
        return switch (cut) {
            case BlockCut.Slot slot -> slotName(number);
            case BlockCut.Step step -> stepName(number);
        };
    }

    private static String slotName(int number) {
        return "slot " + number;
    }

    private static String stepName(int number) {
        return "step " + number;
    }

    private static Optional<BlockCut> slot(Form form, int number) {
        String name = form.findText("name").orElse(slotName(number));
        Size width = Values.size(form, "slot");
        BlockCut.Way along = form.value("along", BlockCutForm::way, BlockCut.Way.X);
        Size at = Values.size(form, "at");
        Size depth = Values.size(form, "depth");
        BlockCut.Run run = form.has("from") || form.has("length")
                ? new BlockCut.Run.Part(Values.size(form, "from"), Values.size(form, "length"))
                : new BlockCut.Run.Open();
        return form.build(() -> new BlockCut.Slot(name, along, at, width, depth, run));
    }

    private static Optional<BlockCut> step(Form form, int number) {
        String name = form.findText("name").orElse(stepName(number));
        Size width = Values.size(form, "step");
        BlockCut.Side side = form.value("side", BlockCutForm::side, BlockCut.Side.LEFT);
        Size depth = Values.size(form, "depth");
        return form.build(() -> new BlockCut.Step(name, side, width, depth));
    }

    private static BlockCut.Way way(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "x" -> BlockCut.Way.X;
            case "y" -> BlockCut.Way.Y;
            default -> throw new Unreadable("A slot runs along x, the length, or along y, the width.");
        };
    }

    private static BlockCut.Side side(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "left" -> BlockCut.Side.LEFT;
            case "right" -> BlockCut.Side.RIGHT;
            case "lower" -> BlockCut.Side.LOWER;
            case "upper" -> BlockCut.Side.UPPER;
            default -> throw new Unreadable("Seen from above a block has a left, right, lower and upper side.");
        };
    }

    static void write(List<BlockCut> cuts, YamlLines lines) {
        if (cuts.isEmpty()) {
            return;
        }
        lines.begin("cuts");
        for (int i = 0; i < cuts.size(); i++) {
            lines.entry();
            write(cuts.get(i), defaultName(cuts.get(i), i + 1), lines);
            lines.endEntry();
        }
        lines.end();
    }

    private static void write(BlockCut cut, String defaultName, YamlLines lines) {
        switch (cut) {
            case BlockCut.Slot slot -> {
                lines.value("slot", SizeText.write(slot.width()));
                PartWriter.name(lines, slot.name(), defaultName);
                lines.words("along", slot.along().name().toLowerCase(Locale.ROOT));
                lines.value("at", SizeText.write(slot.at()));
                if (slot.run() instanceof BlockCut.Run.Part(Size from, Size length)) {
                    lines.value("from", SizeText.write(from)).value("length", SizeText.write(length));
                }
            }
            case BlockCut.Step step -> {
                lines.value("step", SizeText.write(step.width()));
                PartWriter.name(lines, step.name(), defaultName);
                lines.value("side", step.side().name().toLowerCase(Locale.ROOT));
            }
        }
        lines.value("depth", SizeText.write(cut.depth()));
    }
}
