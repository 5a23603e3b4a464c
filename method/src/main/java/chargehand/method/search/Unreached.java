package chargehand.method.search;

import chargehand.method.kit.Kit;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.setting.GearCutters;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.InBore;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Remembers which tasks any holding could do, so that a search that fails can say what stood in its way. */
final class Unreached {
    private final Part part;
    private final Kit kit;
    private final Body.Turned body;
    private final Unlock unlock;
    private final Set<Task> wanted = new LinkedHashSet<>();
    private final Set<Task> reached = new HashSet<>();

    Unreached(Part part, Kit kit, Body.Turned body) {
        this.part = part;
        this.kit = kit;
        this.body = body;
        this.unlock = new Unlock(kit);
    }

    /** Notes what raw work asks for, and what its stock brings with it. */
    void want(Standing raw) {
        raw.tasks().required().stream().mapToObj(raw.tasks()::get).forEach(wanted::add);
        raw.done().stream().mapToObj(raw.tasks()::get).forEach(reached::add);
    }

    void reach(Task task) {
        reached.add(task);
    }

    /** The reasons: one for each task no holding could do, or one for the whole where each could but not all together. */
    List<Reason> reasons() {
        var reasons = new ArrayList<Reason>();
        for (Task task : wanted) {
            if (!reached.contains(task)) {
                reasons.add(reason(task));
            }
        }
        if (reasons.isEmpty()) {
            reasons.add(new Reason(
                    Code.NO_HOLDING,
                    "Every surface of " + part.title()
                            + " could be made here by itself, but no order of holdings makes them all: what is made first"
                            + " leaves too little to hold, or is not held true enough for what is tied to it.",
                    "Leave a stub to hold by, allow more run-out, or make a bush or fixture to hold it."));
        }
        return reasons.stream().distinct().toList();
    }

    /** The reason why a task cannot be done here. */
    Reason reason(Task task) {
        return switch (task) {
            case Task.Threading thread ->
                new Reason(
                        Code.NO_THREAD_WAY,
                        thread.section().thread().designation() + " on "
                                + thread.section().name()
                                + " cannot be cut: no die that reaches it is owned, and no train of the lathes' wheels cuts its"
                                + " pitch near enough with a tool of its angle.",
                        unlock.thread(thread.section()));
            case Task.Flats flats ->
                new Reason(
                        Code.NO_DIVISION,
                        "The " + flats.section().sides() + " flats of "
                                + flats.section().name()
                                + " cannot be milled: nothing holds the work in a dividing head with them clear.",
                        unlock.division(flats.section().sides()));
            case Task.Teeth teeth -> teethReason(teeth.section());
            case Task.FaceHoles holes ->
                new Reason(
                        Code.NO_TOOL,
                        holes.holes().name()
                                + " cannot be drilled: no drill of that size is owned, or no mill's table takes the work upright"
                                + " under its clamps.",
                        "The drill for it, or a drilling plate turned to locate in the bore.");
            case Task.Inside inside -> insideReason(inside.bore());
            case Task.InWall inWall -> inWallReason(inWall.inBore());
            case Task.Crossing crossing -> crossingReason(crossing.across());
            case Task.Turned(int index, Section.Groove groove) ->
                new Reason(
                        Code.NO_TOOL,
                        groove.name()
                                + " cannot be cut: no grooving tool that is owned goes into its width and reaches its"
                                + " depth from the larger surface beside it, or no holding leaves it clear.",
                        "A grooving tool or a narrow parting blade that reaches so deep.");
            case Task.Turned turned ->
                holding("The outside of " + turned.section().name() + " cannot be turned");
            case Task.Corner corner -> holding("A corner of " + corner.section().name() + " cannot be reached");
            case Task.FaceOf face -> holding("End " + face.end() + " cannot be faced");
            case Task.OffTheBar off -> holding("It cannot be parted off");
            case Task.CentreIn centre -> holding("End " + centre.end() + " cannot be centred");
        };
    }

    private Reason holding(String what) {
        boolean anyLathe = !kit.lathes().isEmpty();
        return new Reason(
                anyLathe ? Code.NO_HOLDING : Code.NO_MACHINE,
                what + ": no holding on this kit's machines leaves it clear, grips enough and is stiff enough.",
                unlock.holding(body));
    }

    private Reason teethReason(Section.Toothed section) {
        if (GearCutters.pick(kit.tooling(), section).isEmpty()) {
            return new Reason(
                    Code.NO_TOOL,
                    section.name() + " cannot be cut: no form cutter of " + GearCutters.wanted(section) + " is owned.",
                    "Borrow the form cutter for " + GearCutters.wanted(section) + ", or send the blank out to be cut.");
        }
        return new Reason(
                Code.NO_DIVISION,
                "The " + section.teeth() + " teeth of " + section.name()
                        + " cannot be cut: they are not divided by the plates and gears of a head here, nothing holds the"
                        + " work true between its centres, or what lies beside them is in the cutter's way.",
                "A mandrel for the bore to go between the dividing head and its tail centre; or "
                        + unlock.division(section.teeth()));
    }

    private Reason insideReason(Bore bore) {
        return new Reason(
                Code.NO_TOOL,
                bore.name() + " cannot be made: no drill, boring bar, reamer or tap that is owned reaches its size and"
                        + " depth from an end that can be held clear.",
                unlock.bore(bore));
    }

    private static Reason inWallReason(InBore inBore) {
        return switch (inBore) {
            case InBore.Keyway keyway ->
                new Reason(
                        Code.NO_TOOL,
                        keyway.name()
                                + " cannot be slotted: no slotting bar that is owned takes its width, goes into its"
                                + " bore and reaches right through it, or the bore does not go right through.",
                        "A slotting bar that goes through the bore, with a bit ground to the key; or send it out to be"
                                + " broached.");
            case InBore.OilGroove groove ->
                new Reason(
                        Code.NO_TOOL,
                        groove.name()
                                + " cannot be planed: no slotting bar that is owned takes its width, goes into its"
                                + " bore and reaches along it.",
                        "A slotting bar that goes into the bore, with a round bit; or chip and scrape it by hand.");
            case InBore.Recess recess ->
                new Reason(
                        Code.NO_TOOL,
                        recess.name() + " cannot be cut: no inside grooving tool that is owned goes into its bore,"
                                + " reaches so deep and is no wider.",
                        "An inside grooving tool that goes into the bore and reaches so far.");
        };
    }

    private static Reason crossingReason(Across across) {
        return new Reason(
                Code.NO_TOOL,
                across.name()
                        + " cannot be made: no drill or cutter of its size is owned, or nothing holds the work across.",
                "The drill or cutter for it, or a machine that holds the work across.");
    }
}
