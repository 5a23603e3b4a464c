package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Tooling;
import java.util.Comparator;
import java.util.Optional;

/** Which parting tool goes through a diameter: the narrowest that reaches the middle. */
public final class PartingTools {
    private PartingTools() {}

    public static Optional<LatheTool.Parting> pick(Tooling tooling, Length diameter) {
        return tooling.latheTools(LatheTool.Parting.class).stream()
                .filter(tool -> !tool.depth().isLessThan(diameter.half()))
                .min(Comparator.comparing(LatheTool.Parting::width));
    }
}
