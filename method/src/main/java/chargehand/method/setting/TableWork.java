package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Speeds;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Settings;
import chargehand.method.task.Task;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.trade.drill.Drill;
import chargehand.trade.sum.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Writes the operations on turned work that are done on mill and drill: flats, cross holes, keyways. */
final class TableWork {
    private final Making making;
    private final Job job;
    private final Divisions divisions;
    private final Gauges gauges;

    TableWork(Making making, Job job, Divisions divisions) {
        this.making = making;
        this.job = job;
        this.divisions = divisions;
        this.gauges = new Gauges(making.kit().tooling());
    }

    List<Draft> write() {
        var drafts = new ArrayList<Draft>();
        job.todo().stream().mapToObj(job.work().tasks()::get).forEach(task -> {
            switch (task) {
                case Task.Flats flats -> drafts.add(flats(flats));
                case Task.Teeth teeth ->
                    drafts.add(new TeethWork(making, (Mill) machine(), divisions)
                            .cut(teeth.section(), job.work().shape().start(teeth.index())));
                case Task.FaceHoles holes ->
                    drafts.add(new FaceHoleWork(making, (Mill) machine())
                            .drill(holes.holes(), job.work().shape().body()));
                case Task.Crossing crossing -> drafts.addAll(across(crossing.across()));
                case Task.FaceOf face -> {}
                case Task.CentreIn centre -> {}
                case Task.Turned turned -> {}
                case Task.Corner corner -> {}
                case Task.Threading thread -> {}
                case Task.Inside inside -> {}
                case Task.InWall inWall -> {}
                case Task.OffTheBar off -> {}
            }
        });
        drafts.add(deburr());
        return drafts;
    }

    private Machine machine() {
        return job.choice().machine();
    }

    private LengthUnit unit() {
        return machine().unit();
    }

    private Draft flats(Task.Flats task) {
        Mill mill = (Mill) machine();
        DividingHead head = mill.dividingHead().orElseThrow();
        int sides = task.section().sides();
        Length flats = task.section().flats().length();
        Length from = job.work().shape().start(task.index());
        Length to = job.work().shape().end(task.index());
        Length round = job.work().diameter(task.index());
        MillCutter cutter = flatsCutter(to.minus(from));
        String say = "Mill " + sides + " flats, " + LengthText.in(flats, unit()) + " across, "
                + LengthText.in(to.minus(from), unit()) + " long";
        var draft = new Draft(say, new Cut.MillFlats(sides, flats, from, to), cutter.name(), unit());
        Length depth = round.minus(flats).half();
        draft.working()
                .step(
                        "Depth of cut on each flat, from the round",
                        "h = (D − s) / 2",
                        String.format(Locale.ROOT, "(%.3f − %.3f) / 2", round.mm(), flats.mm()),
                        LengthText.both(depth, unit()),
                        Source.GEOMETRY);
        SpindleSpeed speed = speed(draft, mill.speeds(), cutter.diameter(), CutKind.MILLING);
        draft.passes(depthPasses(mill, depth, round));
        Indexings.plain(head, sides, draft.working()).ifPresent(draft::indexing);
        Length feed = Length.mm(0.05 * cutter.teeth() * speed.rpm());
        Length perMinute = mill.feeds().notAbove(feed).orElse(feed);
        draft.feed(new Settings.Feed.PerMinute(perMinute));
        double cut = to.minus(from).plus(cutter.diameter()).over(perMinute);
        draft.takes(sides
                * (OperationTimes.INDEX_MINUTES + Math.ceil(depth.mm() / 2.5) * (cut + OperationTimes.PASS_MINUTES)));
        draft.reading(gauges.outside(
                "across flats of " + task.section().name(),
                making.limits(task.section().flats())));
        draft.caution("Lock the dividing head before each cut; guard on; brush chips only with the cutter stopped.");
        return draft;
    }

    private List<Settings.Pass> depthPasses(Mill mill, Length depth, Length round) {
        int cuts = (int) Math.max(1, Math.ceil(depth.mm() / 2.5));
        var passes = new ArrayList<Settings.Pass>();
        for (int i = 1; i <= cuts; i++) {
            Length in = depth.times((double) i / cuts);
            Length dial = mill.dials().up().nearest(in);
            passes.add(new Settings.Pass(i, dial, round.minus((i == cuts ? depth : dial).times(2))));
        }
        return passes;
    }

    /** The smallest cutter that covers the flats; where none does, the largest there is. */
    private MillCutter flatsCutter(Length length) {
        return making.kit().tooling().millCutters().stream()
                .filter(cutter -> cutter instanceof MillCutter.EndMill || cutter instanceof MillCutter.SlotDrill)
                .min(Comparator.comparing(
                                (MillCutter cutter) -> cutter.diameter().isLessThan(length))
                        .thenComparing(cutter -> cutter.diameter().isLessThan(length)
                                ? cutter.diameter().negated()
                                : cutter.diameter()))
                .orElseThrow();
    }

    private List<Draft> across(Across across) {
        return switch (across) {
            case Across.CrossHole hole -> crossHole(hole);
            case Across.Keyway keyway -> List.of(keyway(keyway));
            case Across.Flat flat -> throw notPlanned(flat);
            case Across.TaperPin pin -> throw notPlanned(pin);
            case Across.Slit slit -> throw notPlanned(slit);
        };
    }

    private static IllegalStateException notPlanned(Across across) {
        return new IllegalStateException("no holding is found for what is not planned: " + across);
    }

    private List<Draft> crossHole(Across.CrossHole hole) {
        Speeds speeds = DrillingSpeeds.of(machine());
        Length diameter = hole.diameter().length();
        HoleTools tools = making.kit().tooling().holeTools();
        String name = tools.drillNotAbove(diameter).map(Drill::designation).orElse("");
        boolean through = hole.depth() instanceof Depth.Through;
        Length depth = hole.depth() instanceof Depth.Blind blind ? blind.depth().length() : Length.ZERO;
        var cut = new Cut.DrillAcross(hole.at().length(), diameter, hole.around(), through, depth);
        String where = LengthText.in(hole.at().length(), unit()) + " from end A";
        String say = "Centre and drill " + name + " across, " + where
                + (through ? ", through" : ", " + LengthText.in(depth, unit()) + " deep");
        var draft = new Draft(say, cut, "drill " + name, unit());
        SpindleSpeed speed = speed(draft, speeds, diameter, CutKind.DRILLING);
        Length thickness = job.work().shape().body().largestDiameter();
        draft.takes(1.5 + OperationTimes.feeding(through ? thickness : depth, Length.mm(0.08), speed));
        draft.reading(gauges.outside("from end A to the middle of " + hole.name(), making.limits(hole.at())));
        draft.caution("Clamp the work before drilling: a drill breaking through can snatch and spin it.");
        return List.of(draft);
    }

    private Draft keyway(Across.Keyway keyway) {
        Mill mill = (Mill) machine();
        Length width = keyway.width().length();
        String cutter = making.kit().tooling().millCutters(MillCutter.SlotDrill.class).stream()
                .filter(each -> !each.diameter().isMoreThan(width))
                .max(Comparator.comparing(MillCutter::diameter))
                .map(MillCutter::name)
                .orElse("slot drill " + LengthText.in(width, unit()));
        Length from = keyway.from().length();
        var cut = new Cut.MillKeyway(
                from, keyway.length().length(), width, keyway.depth().length(), keyway.around());
        String say = "Mill the keyway " + LengthText.in(width, unit()) + " wide, "
                + LengthText.in(keyway.depth().length(), unit()) + " deep, "
                + LengthText.in(keyway.length().length(), unit()) + " long";
        var draft = new Draft(say, cut, cutter, unit());
        SpindleSpeed speed = speed(draft, mill.speeds(), width, CutKind.MILLING);
        Length perMinute = Length.mm(0.03 * 2 * speed.rpm());
        int cuts = (int) Math.max(2, Math.ceil(keyway.depth().length().mm() / 1.5));
        draft.takes(3 + cuts * (keyway.length().length().over(perMinute) + OperationTimes.PASS_MINUTES));
        draft.reading(gauges.inside("width of " + keyway.name(), making.limits(keyway.width())));
        draft.caution("Guard on; chips with a brush and the cutter stopped.");
        return draft;
    }

    private Draft deburr() {
        String tool = making.kit().tooling().deburring().stream().findFirst().orElse("smooth file");
        return new Draft("Take off all burrs", new Cut.Deburr(), tool, unit()).takes(OperationTimes.HAND_FEED_MINUTES);
    }

    private SpindleSpeed speed(Draft draft, Speeds speeds, Length diameter, CutKind kind) {
        SpindleSpeed speed = Spindle.pick(speeds, diameter, kind, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        return speed;
    }
}
