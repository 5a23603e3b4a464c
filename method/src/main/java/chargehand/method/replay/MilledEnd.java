package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.OnEnd;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Solid.TeethPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/** Holds teeth and holes in faces, as they are at the end, against the drawing: each once, and none besides. */
final class MilledEnd {
    private final Body.Turned body;
    private final Features made;
    private final FaultList faults;

    MilledEnd(Body.Turned body, Features made, FaultList faults) {
        this.body = body;
        this.made = made;
        this.faults = faults;
    }

    void check() {
        match("set of teeth", made.teeth(), Solid.of(body).teeth(), MilledEnd::isSame);
        List<OnEnd.Drilled> holes = body.onEnds().stream()
                .filter(feature -> feature instanceof OnEnd.Drilled && !feature.isThere())
                .map(OnEnd.Drilled.class::cast)
                .toList();
        match("circle of holes", made.circles(), holes, MilledEnd::isSame);
    }

    private static boolean isSame(TeethPlace one, TeethPlace other) {
        return one.count() == other.count()
                && near(one.pitchDiameter(), other.pitchDiameter())
                && near(one.root(), other.root())
                && near(one.from(), other.from())
                && near(one.to(), other.to());
    }

    private static boolean isSame(Cut.DrillCircle cut, OnEnd.Drilled asked) {
        return cut.end() == asked.end()
                && cut.count() == asked.circle().count()
                && near(cut.circle(), asked.circle().diameter().length())
                && near(cut.diameter(), asked.diameter().length())
                && Math.abs(cut.around().degrees() - asked.circle().around().degrees()) <= Believable.ANGLE_NEAR
                && isAsDeep(cut, asked.depth());
    }

    private static boolean isAsDeep(Cut.DrillCircle cut, Depth depth) {
        return switch (depth) {
            case Depth.Through through -> cut.through();
            case Depth.Blind(var size) -> !cut.through() && near(cut.depth(), size.length());
        };
    }

    private static boolean near(Length one, Length other) {
        return one.isWithin(Deviation.ALLOWED, other);
    }

    private <M, W> void match(String what, List<M> cut, List<W> asked, BiPredicate<M, W> same) {
        var missing = new ArrayList<>(asked);
        for (M each : cut) {
            boolean found = missing.stream()
                    .filter(place -> same.test(each, place))
                    .findFirst()
                    .map(missing::remove)
                    .orElse(false);
            faults.unless(
                    found, Fault.Code.NOT_AS_DRAWN, () -> "a " + what + " is made that the part does not have so");
        }
        faults.unless(missing.isEmpty(), Fault.Code.NOT_AS_DRAWN, () -> "a " + what + " of the part is not made");
    }
}
