package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Mill;
import chargehand.method.plan.Holding;
import chargehand.method.setting.GrooveGround;
import chargehand.method.setting.GroovingTools;
import chargehand.method.setting.Indexings;
import chargehand.method.setting.PartingTools;
import chargehand.method.setting.ThreadWays;
import chargehand.method.task.Bores;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.Across;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.BitSet;

/** Which tasks can be done in one holding of the work, taken together: each is added once all that must precede it is. */
final class Reach {
    /** Room a form tool needs beside a corner that faces away from the free end. */
    private static final Length ROOM_BEHIND = Length.mm(3);

    /** Room that a tool on its saddle needs between the dog and the section that it begins. */
    private static final Length ROOM_TO_START = Length.mm(25);

    private final Kit kit;
    private final ThreadWays ways;
    private final Trueness trueness;
    private final Owned owned;
    private final InsideReach inside;
    private final Standing work;
    private final Choice choice;
    private final BitSet soFar;
    private final BitSet done;

    Reach(Kit kit, ThreadWays ways, Trueness trueness, Held held) {
        this.kit = kit;
        this.ways = ways;
        this.trueness = trueness;
        this.work = held.work();
        this.choice = held.choice();
        this.owned = new Owned(kit, ways, work.shape().body());
        this.inside = new InsideReach(owned, choice);
        this.soFar = new BitSet(work.tasks().size());
        this.done = work.done();
    }

    /** The work in one holding. */
    record Held(Standing work, Choice choice) {}

    /** The largest set of allowed tasks that can be done in this holding. */
    BitSet all(BitSet allowed) {
        grow(allowed);
        return soFar;
    }

    private void grow(BitSet allowed) {
        boolean more = true;
        while (more) {
            more = false;
            for (int i = allowed.nextSetBit(0); i >= 0; i = allowed.nextSetBit(i + 1)) {
                if (!done.get(i) && work.tasks().isReady(i, done) && canDo(i)) {
                    soFar.set(i);
                    done.set(i);
                    more = true;
                }
            }
        }
    }

    private boolean isDoneBy(Task task) {
        return work.tasks().contains(task) && done.get(work.tasks().number(task));
    }

    private boolean canDo(int number) {
        return switch (work.tasks().get(number)) {
            case Task.FaceOf face -> isTurning() && choice.faces().contains(face.end());
            case Task.CentreIn centre -> isTurning() && choice.open().contains(centre.end());
            case Task.Turned turned -> isTurning() && canTurn(turned.index()) && isTrueEnough(number);
            case Task.Corner corner -> isTurning() && canFinish(corner);
            case Task.Threading thread -> isTurning() && canThread(thread) && isTrueEnough(number);
            case Task.Teeth teeth -> canCutTeeth(teeth) && isTrueEnough(number);
            case Task.FaceHoles holes -> canDrill(holes);
            case Task.Flats flats -> choice.work() == Choice.Work.DIVIDING && canIndex(flats);
            case Task.Inside bore -> isTurning() && inside.canMake(bore) && isTrueEnough(number);
            case Task.InWall inWall ->
                isTurning()
                        && choice.open().size() == 1
                        && owned.has(inWall.inBore(), choice.open().iterator().next());
            case Task.Crossing crossing -> canCross(crossing.across());
            case Task.OffTheBar off -> isTurning() && canPartOff();
        };
    }

    private boolean isTurning() {
        return choice.work() == Choice.Work.TURNING;
    }

    private Shape shape() {
        return work.shape();
    }

    private boolean isTrueEnough(int number) {
        return trueness.holds(work, choice, soFar, number);
    }

    /** The ends from which a tool can come along the outside. */
    private boolean isFree(End end) {
        return switch (choice.holding()) {
            case Holding.InChuck chuck -> end != chuck.headstock();
            case Holding.InCollet collet -> end != collet.headstock();
            case Holding.BetweenCentres centres -> end != centres.driven();
            case Holding.OnMandrel mandrel -> true;
            case Holding.OnStub stub -> true;
            case Holding.OnFaceplate plate -> end != plate.headstock();
            case Holding.InDividingHead head -> end != head.headstock();
            case Holding.LaidAcross laid -> false;
            case Holding.InVice vice -> false;
            case Holding.OnTable table -> false;
            case Holding.Clamped clamped -> false;
        };
    }

    private boolean isClear(int section) {
        return choice.clear().contains(shape().start(section), shape().end(section));
    }

    private boolean canTurn(int index) {
        if (!isClear(index)) {
            return false;
        }
        if (shape().section(index) instanceof Section.Groove groove) {
            return hasGrooving(index, groove) && isReachableNeck(index);
        }
        for (End end : End.values()) {
            if (isFree(end) && isOpenTowards(index, end)) {
                return true;
            }
        }
        return (shape().isNeck(index) && isReachableNeck(index)) || isOpenFromBehind(index);
    }

    /**
     * Between centres a section whose shoulder looks to the headstock is turned from behind it, with a left-hand tool that
     * starts over a smaller section which is to size.
     */
    private boolean isOpenFromBehind(int index) {
        if (!(choice.holding() instanceof Holding.BetweenCentres centres)) {
            return false;
        }
        int behind = shape().neighbour(index, centres.driven());
        return shape().isSection(behind)
                && !shape().diameter(behind).isMoreThan(shape().diameter(index))
                && work.isDone(turned(behind))
                && !room(behind, centres.driven()).isLessThan(ROOM_TO_START);
    }

    /** How much of a section the dog leaves clear, seen from its border away from the dog. */
    private Length room(int section, End driven) {
        Length dog = driven == End.A ? choice.clear().from() : choice.clear().to();
        return driven.distance(shape().border(section, driven.other()), dog);
    }

    /** Nothing larger in the way, and all on the way turned. */
    private boolean isOpenTowards(int index, End free) {
        if (shape().largestTowards(index, free).isMoreThan(shape().diameter(index))) {
            return false;
        }
        for (int i = shape().neighbour(index, free); shape().isSection(i); i = shape().neighbour(i, free)) {
            if (!(shape().section(i) instanceof Section.Groove) && !isDoneBy(turned(i))) {
                return false;
            }
        }
        return true;
    }

    /** A neck is cut from the side, between neighbours that are to size or will stay as they are. */
    private boolean isReachableNeck(int index) {
        for (End end : End.values()) {
            int neighbour = shape().neighbour(index, end);
            if (isFree(end) && shape().isSection(neighbour) && !isDoneBy(turned(neighbour))) {
                return false;
            }
        }
        return true;
    }

    private Task turned(int index) {
        return new Task.Turned(index, shape().section(index));
    }

    private boolean hasGrooving(int index, Section.Groove groove) {
        var ground = new GrooveGround(work, soFar);
        for (End end : End.values()) {
            Length deep =
                    ground.surface(index, end).minus(groove.diameter().length()).half();
            if (isFree(end)
                    && GroovingTools.pick(kit.tooling(), groove.length(), deep).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** A hollow corner is cut with its own section; a free one from its own side, or from behind where there is room. */
    private boolean canFinish(Task.Corner corner) {
        int index = corner.index();
        Length at = shape().border(index, corner.side());
        if (shape().edge(index, corner.side()) instanceof Edge.Radius && shape().isHollow(index, corner.side())) {
            return soFar.get(work.tasks().number(turned(index)));
        }
        Length joint = corner.side().other().from(at, reach(shape().edge(index, corner.side())));
        if (!choice.clear().contains(Length.least(at, joint), Length.most(at, joint))) {
            return false;
        }
        if (isFree(corner.side())) {
            return true;
        }
        int behind = shape().neighbour(index, corner.side());
        return shape().isSection(behind)
                && !shape().section(behind).length().isLessThan(ROOM_BEHIND)
                && isDoneBy(turned(behind))
                && isClear(behind);
    }

    /** How far along the axis an edge reaches from its corner. */
    private static Length reach(Edge edge) {
        return switch (edge) {
            case Edge.Plain plain -> Length.ZERO;
            case Edge.Chamfer chamfer -> chamfer.length().length();
            case Edge.WeldPreparation prepared -> prepared.reach();
            case Edge.Radius radius -> radius.radius().length();
        };
    }

    private boolean canThread(Task.Threading thread) {
        int index = thread.index();
        if (!isClear(index) || !(choice.machine() instanceof Lathe lathe)) {
            return false;
        }
        var screw = thread.section().thread();
        Length length = thread.section().length();
        boolean open = false;
        for (End end : End.values()) {
            open |= isFree(end) && !shape().largestTowards(index, end).isMoreThan(screw.core());
        }
        return (open && !choice.isCentred() && ways.hasDie(screw, length))
                || ways.train(lathe, screw, length).isPresent();
    }

    private boolean canIndex(Task.Flats flats) {
        return isClear(flats.index())
                && choice.machine() instanceof Mill mill
                && mill.dividingHead()
                        .filter(head ->
                                Indexings.isPossible(head, flats.section().sides()))
                        .isPresent()
                && !kit.tooling().millCutters().isEmpty();
    }

    /** A wheel with a bore is cut on a mandrel in it, so that its teeth run true to the bore. */
    private boolean canCutTeeth(Task.Teeth teeth) {
        boolean bored = shape().body().inside().stream().anyMatch(Bores::isThrough);
        boolean onMandrel = choice.holding() instanceof Holding.OnMandrel;
        return choice.work() == Choice.Work.DIVIDING
                && bored == onMandrel
                && isClear(teeth.index())
                && isOpenBeside(teeth.index())
                && choice.machine() instanceof Mill mill
                && mill.dividingHead()
                        .flatMap(head ->
                                ways.divisions().find(head, teeth.section().teeth()))
                        .isPresent();
    }

    /** The cutter runs out over what lies beside the teeth, which must not stand above their roots at both sides. */
    private boolean isOpenBeside(int index) {
        Length root = ((Section.Toothed) shape().section(index)).root();
        for (End end : End.values()) {
            if (!shape().largestTowards(index, end).isMoreThan(root)) {
                return true;
            }
        }
        return false;
    }

    private boolean canDrill(Task.FaceHoles holes) {
        return choice.work() == Choice.Work.UPRIGHT
                && choice.open().contains(holes.holes().end());
    }

    private boolean canCross(Across across) {
        return switch (across) {
            case Across.CrossHole hole ->
                choice.work() == Choice.Work.CROSS_DRILLING
                        && choice.holding() instanceof Holding.LaidAcross laid
                        && laid.around().equals(hole.around())
                        && owned.hasDrill(hole.diameter().length());
            case Across.Keyway keyway ->
                choice.work() == Choice.Work.KEYWAYING
                        && choice.holding() instanceof Holding.LaidAcross laid
                        && laid.around().equals(keyway.around())
                        && owned.hasSlotDrill(keyway.width().length());
            case Across.Flat flat -> false;
            case Across.TaperPin pin -> false;
            case Across.Slit slit -> false;
        };
    }

    /** Work is never parted with a centre in its end: it would jam as it comes free. */
    private boolean canPartOff() {
        return work.slot()
                .filter(slot -> !choice.isCentred() && !isFree(slot.bar()))
                .filter(slot -> choice.clear()
                        .contains(
                                Length.least(slot.partSide(), slot.barSide()),
                                Length.most(slot.partSide(), slot.barSide())))
                .filter(slot -> PartingTools.pick(kit.tooling(), Blanks.swing(work.blank()))
                        .isPresent())
                .isPresent();
    }
}
