package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.kit.HoleTools;
import chargehand.trade.drill.Drill;
import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;

/** The drill before a tap. */
final class TappingDrills {
    private TappingDrills() {}

    /** The owned drill nearest above the basic minor diameter of the nut. */
    static String name(HoleTools tools, ScrewThread thread) {
        Length least = thread.minorInternal();
        return tools.drills().stream()
                .filter(drill -> !drill.diameter().isLessThan(least))
                .min(Comparator.comparing(Drill::diameter))
                .map(Drill::designation)
                .orElse(least.mm() + " mm");
    }
}
