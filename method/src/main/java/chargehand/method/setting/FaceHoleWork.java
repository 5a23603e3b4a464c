package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Mill;
import chargehand.method.plan.Cut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.HoleCircle;
import chargehand.part.OnEnd;
import chargehand.trade.drill.Drill;
import chargehand.trade.sum.Source;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Writes the operation that drills holes on a circle, each place set by the two dials of the mill's table. */
final class FaceHoleWork {
    private static final Length FEED = Length.mm(0.08);

    private final Making making;
    private final Mill mill;

    FaceHoleWork(Making making, Mill mill) {
        this.making = making;
        this.mill = mill;
    }

    Draft drill(OnEnd.Drilled holes, Body.Turned body) {
        Length diameter = holes.diameter().length();
        String name = making.kit().tooling().holeTools().drills().stream()
                .min(Comparator.comparing(
                        (Drill drill) -> drill.diameter().minus(diameter).abs()))
                .map(Drill::designation)
                .orElseThrow();
        boolean through = holes.depth() instanceof Depth.Through;
        Length depth =
                holes.depth() instanceof Depth.Blind blind ? blind.depth().length() : Length.ZERO;
        int count = holes.circle().count();
        var cut = new Cut.DrillCircle(
                holes.end(),
                count,
                holes.circle().diameter().length(),
                holes.circle().around(),
                diameter,
                through,
                depth);
        String say = "Centre and drill " + count + " holes " + name + " on a circle of "
                + LengthText.both(holes.circle().diameter().length(), mill.unit())
                + (through ? ", through; " : ", " + LengthText.both(depth, mill.unit()) + " deep; ")
                + places(holes.circle());
        var draft = new Draft(say, cut, "drill " + name, mill.unit());
        draft.working()
                .step(
                        "Places of the holes from the middle, along and across the table",
                        "x = R sin φ, y = R cos φ",
                        String.format(
                                Locale.ROOT,
                                "R = %.3f mm",
                                holes.circle().diameter().length().mm() / 2),
                        places(holes.circle()),
                        Source.GEOMETRY);
        SpindleSpeed speed =
                Spindle.pick(mill.speeds(), diameter, CutKind.DRILLING, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        Length deep = through ? body.length() : depth;
        draft.takes(3 + count * (2 * OperationTimes.HAND_FEED_MINUTES + OperationTimes.feeding(deep, FEED, speed)));
        draft.reading(
                new Gauges(making.kit().tooling()).inside("Ø of " + holes.name(), making.limits(holes.diameter())));
        draft.caution("Ease the feed as the drill breaks through: it snatches, most of all in brass and gunmetal.");
        return draft;
    }

    /** Every hole by the two dials, from zero at the middle of the work. */
    private String places(HoleCircle circle) {
        return IntStream.range(0, circle.count())
                .mapToObj(hole -> place(circle, hole))
                .collect(Collectors.joining("; "));
    }

    private String place(HoleCircle circle, int hole) {
        double turned = Math.toRadians(circle.around().degrees()) + 2 * Math.PI * hole / circle.count();
        Length radius = circle.diameter().length().half();
        return (hole + 1) + ": "
                + along(radius.times(Math.sin(turned)), "right", "left") + ", "
                + along(radius.times(Math.cos(turned)), "back", "forward");
    }

    private String along(Length by, String more, String less) {
        Length set = mill.dials().along().nearest(by);
        return set.isZero() ? "0" : LengthText.in(set.abs(), mill.unit()) + " " + (set.isNegative() ? less : more);
    }
}
