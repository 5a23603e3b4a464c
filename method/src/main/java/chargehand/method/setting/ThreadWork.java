package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Gauge;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Settings;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.wheels.CutPitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the operation that cuts an outside thread on one lathe, by whichever of its possible ways takes less time. */
final class ThreadWork {
    private static final Length LAST_CUT = Length.mm(0.05);

    private final Making making;
    private final Lathe lathe;
    private final ThreadWays ways;

    ThreadWork(Making making, Lathe lathe, ThreadWays ways) {
        this.making = making;
        this.lathe = lathe;
        this.ways = ways;
    }

    /**
     * The operation, or none where this lathe has no way.
     *
     * @param reachable whether a die can be led on from the tailstock
     * @param pieces over which the change of wheels is spread
     */
    Optional<Draft> outside(ScrewThread thread, Length from, Length to, boolean reachable, int pieces) {
        Length length = to.minus(from);
        var options = new ArrayList<Draft>();
        if (reachable && ways.hasDie(thread, length)) {
            options.add(die(thread, from, to));
        }
        ways.train(lathe, thread, length).ifPresent(train -> options.add(screwCut(thread, from, to, train, pieces)));
        return options.stream().min((one, other) -> Double.compare(one.minutes(), other.minutes()));
    }

    private Draft die(ScrewThread thread, Length from, Length to) {
        String name = thread.designation();
        var cut = new Cut.ThreadOutside(thread, from, to, Cut.ThreadWay.DIE_FROM_TAILSTOCK);
        var draft = new Draft(
                "Cut the thread " + name + " with the die, led from the tailstock" + tryWith(thread),
                cut,
                "die " + name + " in the tailstock holder",
                lathe.unit());
        draft.speed(
                Spindle.pick(lathe.speeds(), thread.major(), CutKind.DIE_CUTTING, making.material(), draft.working()));
        draft.working()
                .fact(
                        "Why the die: it is owned, the thread is short and runs out to the end",
                        LengthText.in(to.minus(from), lathe.unit()) + " of " + name,
                        Source.COMMON_PRACTICE);
        draft.coolant(Coolant.forThread(making.material()));
        return draft.takes(OperationTimes.DIE_MINUTES);
    }

    private Draft screwCut(ScrewThread thread, Length from, Length to, CutPitch train, int pieces) {
        String name = thread.designation();
        String tool = ways.screwCutter(thread).map(LatheTool.ScrewCutter::name).orElse("screw-cutting tool");
        var cut = new Cut.ThreadOutside(thread, from, to, Cut.ThreadWay.SCREW_CUT);
        String away = thread.leftHand() ? ", left hand, away from the headstock" : "";
        var draft = new Draft("Screw-cut " + name + away + tryWith(thread), cut, tool, lathe.unit());
        SpindleSpeed speed =
                Spindle.pick(lathe.speeds(), thread.major(), CutKind.SCREW_CUTTING, making.material(), draft.working());
        draft.speed(speed);
        draft.gearing(gearing(thread, train, draft.working()));
        List<Settings.Pass> passes = passes(thread, draft.working());
        draft.passes(passes);
        draft.coolant(Coolant.forThread(making.material()));
        double each = OperationTimes.PASS_MINUTES * 1.5
                + OperationTimes.feeding(to.minus(from), thread.lead().length(), speed);
        return draft.takes(passes.size() * each + OperationTimes.CHANGE_WHEELS_MINUTES / pieces)
                .caution(
                        "Screw-cutting: slowest comfortable speed, hand on the half-nut lever, and know where you will stop.");
    }

    private Settings.Gearing gearing(ScrewThread thread, CutPitch train, Working working) {
        ScrewCutting cutting = lathe.screwCutting();
        double error = train.error().doubleValue();
        working.step(
                "Train from spindle to leadscrew",
                "drivers / driven = lead / pitch of leadscrew",
                train.train().toString(),
                train.exact()
                        ? "exact"
                        : String.format(
                                Locale.ROOT,
                                "cuts %.5f mm, off by %.1f parts in a million",
                                train.pitch().inMm(),
                                error * 1e6),
                Source.GEOMETRY);
        String box = cutting.gearbox().stream()
                .filter(ratio -> ratio.turns().equals(train.train().gearbox()))
                .map(ScrewCutting.Ratio::name)
                .findFirst()
                .orElse("");
        return new Settings.Gearing(
                train.train().drivers(), train.train().driven(), box, error, DialMarks.say(cutting, thread, train));
    }

    /** Passes of falling depth, straight in, counted on the cross dial from the surface: each takes an equal area of chip. */
    private List<Settings.Pass> passes(ScrewThread thread, Working working) {
        Length depth = thread.depth();
        int cuts = (int) Math.max(4, Math.ceil(4 + depth.mm() / 0.15));
        var passes = new ArrayList<Settings.Pass>();
        for (int i = 1; i <= cuts; i++) {
            Length in = i == cuts ? depth : depth.minus(LAST_CUT).times(Math.sqrt((double) i / (cuts - 1)));
            Length off = Length.least(depth, in).times(2);
            Length dial = lathe.slides().cross().nearest(lathe.slides().crossReading(off));
            passes.add(new Settings.Pass(i, dial, thread.major().minus(off)));
        }
        working.step(
                "Depth of thread and passes of equal chip",
                "depth after pass i = h √(i / n), the last a light one",
                String.format(Locale.ROOT, "h = %.3f mm, n = %d", depth.mm(), cuts - 1),
                cuts + " passes; the last reads "
                        + LengthText.in(passes.getLast().dial(), lathe.unit()),
                Source.COMMON_PRACTICE);
        return passes;
    }

    /** What the thread is tried with before the work leaves its holding. */
    private String tryWith(ScrewThread thread) {
        return making.kit().tooling().gauges(Gauge.ThreadGauge.class).stream()
                .filter(gauge ->
                        gauge.form() == Gauge.ThreadForm.RING && gauge.thread().equals(thread.designation()))
                .map(gauge -> "; try with the " + gauge.name())
                .findFirst()
                .orElse("; try with the mating part or a nut");
    }
}
