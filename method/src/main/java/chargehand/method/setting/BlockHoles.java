package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Vice;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.method.plan.SetUp;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.part.Size;
import chargehand.trade.drill.Drill;
import java.util.ArrayList;
import java.util.List;

/** Writes the set-up that drills, reams and taps the holes of a block on one drill or mill. */
public final class BlockHoles {
    private static final double SETTING_MINUTES = 8;
    private static final double LOADING_MINUTES = 1.2;
    private static final double PLACING_MINUTES = 0.8;
    private static final Length REAMING_ROOM = Length.mm(0.25);
    private static final Length ABOVE_JAWS = Length.mm(3);

    private final BlockMaking making;
    private final Machine machine;
    private final BlockRest rest;
    private final List<Draft> drafts = new ArrayList<>();

    public BlockHoles(BlockMaking making, Machine machine, BlockRest rest) {
        this.making = making;
        this.machine = machine;
        this.rest = rest;
    }

    /** All holes in one holding, top up. */
    public SetUp write(int number) {
        making.body().holes().forEach(this::add);
        drafts.add(new Draft(
                        "Take off all burrs, both sides of every hole",
                        new Cut.Deburr(),
                        "countersink by hand",
                        machine.unit())
                .takes(OperationTimes.HAND_FEED_MINUTES));
        var operations = new ArrayList<Operation>();
        for (Draft draft : drafts) {
            operations.add(draft.write(operations.size() + 1));
        }
        return new SetUp(
                number,
                machine.name(),
                holding(),
                instructions(),
                operations,
                WorkTime.minutes(SETTING_MINUTES),
                WorkTime.minutes(LOADING_MINUTES),
                List.of());
    }

    private Holding holding() {
        return switch (rest) {
            case BlockRest.InVice(Vice vice) ->
                new Holding.InVice(vice.name(), Holding.Face.FAR, Holding.Face.BOTTOM, ABOVE_JAWS);
            case BlockRest.OnTable table -> new Holding.OnTable(Holding.Face.BOTTOM, List.of());
        };
    }

    private List<String> instructions() {
        return switch (rest) {
            case BlockRest.InVice(Vice vice) ->
                List.of(
                        "Hold in the " + vice.name()
                                + ", far side against the fixed jaw, bottom down on parallels clear of"
                                + " the holes, left end against a stop.",
                        "Bolt the vice down: a drill that snatches takes the work with it.");
            case BlockRest.OnTable table ->
                List.of(
                        "Bottom down on the table, on parallels clear of every hole that goes through.",
                        "Clamp at two places or more, clear of the holes; none drilled until it cannot be moved by hand.");
        };
    }

    private void add(Hole hole) {
        switch (hole) {
            case Hole.Drilled drilled ->
                drafts.add(drill(hole, drilled.diameter().length()));
            case Hole.Reamed reamed -> {
                drafts.add(drill(hole, pilot(reamed.diameter().length())));
                drafts.add(ream(reamed));
            }
            case Hole.Counterbored bored -> throw new IllegalStateException("counterbores are not planned: " + bored);
            case Hole.Tapped tapped -> {
                drafts.add(drill(hole, tapped.thread().minorInternal()));
                drafts.add(tap(tapped));
            }
        }
    }

    private Length pilot(Length diameter) {
        return tools().drillNotAbove(diameter.minus(REAMING_ROOM))
                .map(Drill::diameter)
                .orElse(diameter.minus(REAMING_ROOM));
    }

    private HoleTools tools() {
        return making.kit().tooling().holeTools();
    }

    private Length depth(Hole hole) {
        return switch (hole.depth()) {
            case Depth.Through through -> making.body().thickness().length();
            case Depth.Blind blind -> blind.depth().length();
        };
    }

    private static boolean isThrough(Hole hole) {
        return switch (hole.depth()) {
            case Depth.Through through -> true;
            case Depth.Blind blind -> false;
        };
    }

    private String place(Hole hole) {
        return LengthText.in(hole.x().length(), machine.unit()) + " from the left, "
                + LengthText.in(hole.y().length(), machine.unit()) + " from the near side";
    }

    private Draft drill(Hole hole, Length diameter) {
        Length x = hole.x().length();
        Length y = hole.y().length();
        String name = tools().drills().stream()
                .filter(drill -> !drill.diameter().isLessThan(diameter))
                .findFirst()
                .map(Drill::designation)
                .orElse(LengthText.in(diameter, machine.unit()));
        var cut = new Cut.DrillHole(x, y, diameter, isThrough(hole), depth(hole));
        var draft = new Draft(
                "Centre and drill " + name + (isThrough(hole) ? " through" : "") + ", " + place(hole),
                cut,
                "drill " + name,
                machine.unit());
        SpindleSpeed speed = speed(draft, diameter, CutKind.DRILLING);
        Length feed = Length.mm(Math.min(0.25, 0.02 * diameter.mm()));
        draft.takes(PLACING_MINUTES + OperationTimes.feeding(depth(hole), feed, speed));
        draft.reading(position(hole.x(), hole, "left"));
        draft.caution("Never hold the work by hand under a drill.");
        return draft;
    }

    private Reading position(Size size, Hole hole, String from) {
        return new Gauges(making.kit().tooling())
                .outside("from the " + from + " to the middle of " + hole.name(), making.limits(size));
    }

    private Draft ream(Hole.Reamed hole) {
        Length diameter = hole.diameter().length();
        var cut = new Cut.ReamHole(hole.x().length(), hole.y().length(), diameter, isThrough(hole), depth(hole));
        String name = LengthText.in(diameter, machine.unit());
        var draft = new Draft("Ream " + name, cut, "reamer " + name, machine.unit());
        SpindleSpeed speed = speed(draft, diameter, CutKind.REAMING);
        draft.takes(OperationTimes.HAND_FEED_MINUTES + OperationTimes.feeding(depth(hole), Length.mm(0.2), speed));
        draft.reading(new Gauges(making.kit().tooling()).inside("Ø of " + hole.name(), making.limits(hole.diameter())));
        return draft.caution("Never turn a reamer backwards; draw it out still turning forwards.");
    }

    private Draft tap(Hole.Tapped hole) {
        String name = hole.thread().designation();
        var cut = new Cut.TapHole(hole.x().length(), hole.y().length(), hole.thread(), isThrough(hole), depth(hole));
        var draft = new Draft("Tap " + name + " by hand, square", cut, "tap " + name, machine.unit());
        draft.coolant(Coolant.forThread(making.material()));
        return draft.takes(2.5);
    }

    private SpindleSpeed speed(Draft draft, Length diameter, CutKind kind) {
        SpindleSpeed speed =
                Spindle.pick(DrillingSpeeds.of(machine), diameter, kind, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        return speed;
    }
}
