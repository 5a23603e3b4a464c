package chargehand.method.replay;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A part and a method that makes it. */
record Good(String name, Part part, Method method) {
    private static final int SEED = 20261107;
    private static final int PARTS = 20;

    /** Methods written by hand, those of the demo parts, and those of random parts where there is one. */
    static List<Good> all() {
        Stream<Good> written =
                Stream.of(SmallWork.values()).map(work -> new Good(work.name(), work.drawn(), work.method()));
        Stream<Good> demos = DemoMethods.ALL.stream().map(demo -> new Good(demo.name(), demo.part(), demo.method()));
        return Stream.of(written, demos, random()).flatMap(goods -> goods).toList();
    }

    private static Stream<Good> random() {
        var planner = new Planner(DemoKit.kit(), RandomProofTest.fullRack());
        var generator = new PartGenerator(SEED);
        return IntStream.range(0, PARTS)
                .boxed()
                .map(i -> planned(planner, "random " + i, generator.part()))
                .flatMap(Optional::stream);
    }

    private static Optional<Good> planned(Planner planner, String name, Part part) {
        return planner.plan(part, 1) instanceof Planned.Ready ready
                ? Optional.of(new Good(name, part, ready.method()))
                : Optional.empty();
    }
}
