package chargehand.method.search;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.List;
import java.util.stream.Stream;

/** The demo parts planned on the demo kit from the demo rack, and a few ways of looking at what came out. */
final class DemoMethods {
    private static final Planner PLANNER = new Planner(DemoKit.kit(), DemoKit.soundRack());

    private DemoMethods() {}

    static Part part(String name) {
        return ((PartReading.Read) PartFile.read(DemoKit.part(name))).part();
    }

    static Method plan(String name, int count) {
        return ((Planned.Ready) PLANNER.plan(part(name), count)).method();
    }

    static Planned plan(Part part, int count) {
        return PLANNER.plan(part, count);
    }

    static Part read(String yaml) {
        return ((PartReading.Read) PartFile.read(yaml)).part();
    }

    static Stream<Operation> operations(Method method) {
        return method.setUps().stream().flatMap(setUp -> setUp.operations().stream());
    }

    /** The set-ups in which an operation cuts something of this kind. */
    static List<SetUp> setUpsWith(Method method, Class<?> cut) {
        return method.setUps().stream()
                .filter(setUp -> setUp.operations().stream().anyMatch(operation -> cut.isInstance(operation.cut())))
                .toList();
    }
}
