package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Tooling;
import java.util.Comparator;
import java.util.Optional;

/** Which tool cuts a groove: the widest grooving tool that goes in and reaches its bottom, else a parting tool that does. */
public final class GroovingTools {
    private GroovingTools() {}

    /** Its name; nothing where none is owned. */
    public static Optional<String> pick(Tooling tooling, Length width, Length depth) {
        return tooling.latheTools(LatheTool.Grooving.class).stream()
                .filter(tool -> !tool.width().isMoreThan(width) && !tool.depth().isLessThan(depth))
                .max(Comparator.comparing(LatheTool.Grooving::width))
                .map(LatheTool.Grooving::name)
                .or(() -> parting(tooling, width, depth));
    }

    private static Optional<String> parting(Tooling tooling, Length width, Length depth) {
        return tooling.latheTools(LatheTool.Parting.class).stream()
                .filter(tool -> !tool.width().isMoreThan(width) && !tool.depth().isLessThan(depth))
                .max(Comparator.comparing(LatheTool.Parting::width))
                .map(LatheTool.Parting::name);
    }
}
