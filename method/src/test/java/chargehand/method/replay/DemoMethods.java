package chargehand.method.replay;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import java.util.List;

/**
 * The demo parts and the methods planned for them in the demo shop.
 *
 * @param name of the part's file
 */
record DemoMethods(String name, Part part, Method method) {
    /** All of them, planned once. */
    static final List<DemoMethods> ALL = all(new Planner(DemoKit.kit(), DemoKit.soundRack()));

    private static List<DemoMethods> all(Planner planner) {
        return List.of(
                planned(planner, "union", 1),
                planned(planner, "gland-stud", 24),
                planned(planner, "bearing-bush", 1),
                planned(planner, "ram", 1),
                planned(planner, "roller-pin", 4),
                planned(planner, "shim", 40),
                planned(planner, "sluice-spindle", 1),
                planned(planner, "metric-stud", 1),
                planned(planner, "index-ring", 1),
                planned(planner, "relief-packer", 6),
                planned(planner, "capstan-shaft", 1),
                planned(planner, "pinion", 1));
    }

    static DemoMethods get(String name) {
        return ALL.stream().filter(demo -> demo.name().equals(name)).findFirst().orElseThrow();
    }

    private static DemoMethods planned(Planner planner, String name, int count) {
        Part part = SmallWork.read(DemoKit.part(name));
        return switch (planner.plan(part, count)) {
            case Planned.Ready ready -> new DemoMethods(name, part, ready.method());
            case Planned.NotHere notHere -> throw new AssertionError(name + ": " + notHere.reasons());
        };
    }

    @Override
    public String toString() {
        return name;
    }
}
