package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Mill;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Tooling;
import chargehand.method.setting.BoringBars;
import chargehand.method.setting.GearCutters;
import chargehand.method.setting.Indexings;
import chargehand.method.setting.InnerTools;
import chargehand.method.setting.ThreadWays;
import chargehand.method.task.Bores;
import chargehand.method.task.Task;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.Section;
import java.util.List;
import java.util.stream.Stream;

/** Whether the shop owns what a task takes, however the work may be held: asked before any search, since none can help. */
final class Owned {
    /** What a through bore goes on beyond the part: the facing allowance and a parting slot. */
    private static final Length BEYOND = Length.mm(5);

    /** How near a twist drill must be to the size of a drilled hole. */
    private static final Length DRILL_NEAR = Length.mm(0.15);

    /** How much smaller than the bore the hole is into which a boring bar must go. */
    private static final Length PILOT_ROOM = Length.mm(1.5);

    /** Length of a 118° point over its drill's diameter, and a little more. */
    private static final double POINT_OF_DIAMETER = 0.35;

    /** How near the angle of a countersink must be to that of a cone (degrees). */
    private static final double CONE_NEAR = 0.5;

    private final Kit kit;
    private final Tooling tooling;
    private final ThreadWays ways;
    private final Body.Turned body;

    Owned(Kit kit, ThreadWays ways, Body.Turned body) {
        this.kit = kit;
        this.tooling = kit.tooling();
        this.ways = ways;
        this.body = body;
    }

    /** The tasks for which something is missing. */
    List<Task> missing(List<Task> tasks) {
        return tasks.stream().filter(task -> !has(task)).toList();
    }

    boolean has(Task task) {
        return switch (task) {
            case Task.Inside inside -> has(inside.bore());
            case Task.Crossing crossing -> has(crossing.across());
            case Task.InWall inWall -> Stream.of(End.values()).anyMatch(end -> has(inWall.inBore(), end));
            case Task.Threading threading -> has(threading.section());
            case Task.Teeth teeth ->
                hasGearCutter(teeth.section()) && canDivide(teeth.section().teeth());
            case Task.FaceHoles holes -> hasDrill(holes.holes().diameter().length());
            case Task.Flats flats -> canIndex(flats.section().sides());
            case Task.FaceOf face -> true;
            case Task.CentreIn centre -> !tooling.holeTools().centreDrills().isEmpty();
            case Task.Turned turned -> true;
            case Task.Corner corner -> true;
            case Task.OffTheBar off -> true;
        };
    }

    /** A taper thread wants a taper attachment, which no lathe here has. */
    private boolean has(Section.Threaded section) {
        return !section.thread().isTaper() && canCut(section);
    }

    private boolean canCut(Section.Threaded section) {
        return ways.hasDie(section.thread(), section.length())
                || kit.lathes().stream()
                        .anyMatch(lathe -> ways.train(lathe, section.thread(), section.length())
                                .isPresent());
    }

    private boolean canIndex(int sides) {
        return !tooling.millCutters().isEmpty()
                && kit.mills().stream()
                        .map(Mill::dividingHead)
                        .anyMatch(head -> head.filter(each -> Indexings.isPossible(each, sides))
                                .isPresent());
    }

    boolean hasGearCutter(Section.Toothed section) {
        return GearCutters.pick(tooling, section).isPresent();
    }

    private boolean canDivide(int divisions) {
        return kit.mills().stream()
                .map(Mill::dividingHead)
                .anyMatch(head -> head.filter(
                                each -> ways.divisions().find(each, divisions).isPresent())
                        .isPresent());
    }

    boolean has(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> hasDrill(drilled.diameter().length());
            case Bore.Bored bored -> hasBar(bored.diameter().length(), bore);
            case Bore.Counterbored counterbored ->
                hasBar(counterbored.diameter().length(), bore);
            case Bore.Reamed reamed ->
                tooling.holeTools().reamers().stream()
                        .anyMatch(reamer ->
                                reamer.diameter().equals(reamed.diameter().length()));
            case Bore.Tapped tapped -> ways.hasTap(tapped.thread());
            case Bore.Coned coned -> hasConeTool(coned);
        };
    }

    /** A countersink of its angle, or a bar that enters its narrow end. */
    private boolean hasConeTool(Bore.Coned cone) {
        Length narrow = cone.to().length();
        Length wider = cone.mouth().length().minus(narrow);
        Length deep = wider.half().times(1 / cone.angle().half().tan());
        return BoringBars.pick(tooling, narrow, deep).isPresent()
                || tooling.holeTools().countersinks().stream()
                        .anyMatch(tool ->
                                Math.abs(tool.angle().degrees() - cone.angle().degrees()) < CONE_NEAR
                                        && !tool.largest()
                                                .isLessThan(cone.mouth().length()));
    }

    /** Whether there is a tool for what is cut into the wall of a bore that goes in from this end. */
    boolean has(InBore inBore, End end) {
        return new InnerTools(tooling, body).has(inBore, end);
    }

    private boolean has(Across across) {
        return switch (across) {
            case Across.CrossHole hole -> hasDrill(hole.diameter().length());
            case Across.Keyway keyway -> hasSlotDrill(keyway.width().length());
            case Across.Flat flat -> false;
            case Across.TaperPin pin -> false;
            case Across.Slit slit -> false;
        };
    }

    /**
     * The hole as it is drilled first lets a bar in that reaches the bottom. A bore too shallow for a drill's point is opened
     * out from a hole that is there anyway.
     */
    private boolean hasBar(Length diameter, Bore bore) {
        Length under = diameter.minus(PILOT_ROOM);
        boolean drilled = Bores.isThrough(bore) || depth(bore).isMoreThan(under.times(POINT_OF_DIAMETER));
        return drilled ? takesBar(under, bore) : body.inside().stream().anyMatch(other -> opens(other, bore));
    }

    private boolean opens(Bore other, Bore bore) {
        boolean reaches = Bores.isThrough(other)
                || (other.from() == bore.from() && depth(other).isMoreThan(depth(bore)));
        return reaches && !other.equals(bore) && takesBar(Bores.diameter(other), bore);
    }

    private boolean takesBar(Length hole, Bore bore) {
        return BoringBars.pick(tooling, hole, depth(bore)).isPresent();
    }

    boolean hasDrill(Length diameter) {
        return tooling.holeTools().drills().stream()
                .anyMatch(drill -> drill.diameter().isWithin(DRILL_NEAR, diameter));
    }

    boolean hasSlotDrill(Length width) {
        return tooling.millCutters(MillCutter.SlotDrill.class).stream()
                .anyMatch(cutter -> !cutter.diameter().isMoreThan(width));
    }

    /** How deep a tool goes in from a bore's own end: a through one on past the part, where it may still be on its bar. */
    Length depth(Bore bore) {
        return switch (bore.depth()) {
            case Depth.Through through -> body.length().plus(BEYOND);
            case Depth.Blind blind -> blind.depth().length();
        };
    }
}
