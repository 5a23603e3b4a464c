package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Tooling;
import java.util.Comparator;
import java.util.Optional;

/** Which boring bar enters a hole and reaches its bottom: the stoutest that does. */
public final class BoringBars {
    private BoringBars() {}

    public static Optional<LatheTool.BoringBar> pick(Tooling tooling, Length hole, Length depth) {
        return tooling.latheTools(LatheTool.BoringBar.class).stream()
                .filter(bar -> !bar.leastBore().isMoreThan(hole) && !bar.reach().isLessThan(depth))
                .max(Comparator.comparing(LatheTool.BoringBar::leastBore));
    }
}
