package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.plan.Holding;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of the work's outside, of one diameter, that jaws could close on from the headstock's side.
 *
 * @param headstock the end of the part that points to the headstock
 * @param stop how far tools may come; the jaws begin a clearance beyond it
 * @param inner where the stretch ends towards the headstock
 * @param diameter over which the jaws close
 * @param sides of the surface gripped; 0 for round
 * @param gripped what it is
 * @param step whether it lies in a step bored in soft jaws, which comes up closer to the cut
 */
record GripPlace(
        End headstock, Length stop, Length inner, Length diameter, int sides, Choice.Gripped gripped, boolean step) {
    GripPlace(End headstock, Length stop, Length inner, Length diameter, int sides, Choice.Gripped gripped) {
        this(headstock, stop, inner, diameter, sides, gripped, false);
    }

    /** The most that an edge takes up behind jaws on whose steps work still sits. */
    private static final Length MOST_BEHIND = Length.mm(2);

    /**
     * Every place on the work as it stands, with {@code headstock} pointing to the headstock: at each border of sections,
     * and where jaws just cover the end of a long stretch.
     */
    static List<GripPlace> list(Standing work, End headstock, Length jawLength) {
        var places = new ArrayList<GripPlace>();
        for (GripPlace place : borders(work, headstock)) {
            places.add(place);
            place.pushedOut(jawLength).ifPresent(places::add);
        }
        return places;
    }

    private Optional<GripPlace> pushedOut(Length jawLength) {
        Length further = headstock.other().from(inner, jawLength.plus(clearance()));
        return headstock.distance(stop, further).isMoreThan(jawLength)
                ? Optional.of(new GripPlace(headstock, further, inner, diameter, sides, gripped))
                : Optional.empty();
    }

    /**
     * The same stretch held no further back than jaws reach over the end of the work, an edge or a stub lying behind the grip:
     * for work that does not go on into the spindle. This place itself where it does not lie so near the end.
     */
    GripPlace flush(Standing work, Length jawLength) {
        Length end = work.outerEnd(headstock);
        Length further = headstock.other().from(end, jawLength.plus(clearance()));
        boolean edged = headstock.distance(inner, end).isPositive()
                && headstock.distance(further, inner).isPositive()
                && headstock.distance(stop, further).isMoreThan(jawLength);
        return edged ? new GripPlace(headstock, further, inner, diameter, sides, gripped) : this;
    }

    private static List<GripPlace> borders(Standing work, End headstock) {
        var places = new ArrayList<GripPlace>();
        if (work.isOnBar()) {
            work.slot().filter(slot -> slot.bar() == headstock).ifPresent(slot -> addBar(work, slot, places));
            return places;
        }
        if (!work.isOldPart()) {
            addRaw(work, headstock, work.face(headstock), places);
        }
        for (int i = 0; i < work.shape().count(); i++) {
            onSection(work, i, headstock).ifPresent(places::add);
        }
        return places;
    }

    /** Where the jaws begin. */
    Length jawFront() {
        return headstock.from(stop, clearance());
    }

    private Length clearance() {
        return step ? GripRules.CLEARANCE_IN_STEP : clearanceOfJaws();
    }

    private Length clearanceOfJaws() {
        return switch (gripped) {
            case Choice.Gripped.Raw raw -> GripRules.CLEARANCE;
            case Choice.Gripped.OnSection section -> GripRules.CLEARANCE_FINISHED;
            case Choice.Gripped.OnBore bore -> GripRules.CLEARANCE_FINISHED;
            case Choice.Gripped.OnCentres centres -> GripRules.CLEARANCE_FINISHED;
            case Choice.Gripped.OnFace face -> GripRules.CLEARANCE_FINISHED;
        };
    }

    /** Whether a chuck's jaws sit evenly here; independent ones, packed, find the tips of any wheel. */
    boolean isEvenFor(Chuck chuck, Standing work) {
        boolean teeth = gripped instanceof Choice.Gripped.OnSection section
                && work.shape().section(section.index()) instanceof Section.Toothed;
        return sides == 0 || chuck.sitsEvenlyOn(sides) || (teeth && chuck.isIndependent());
    }

    /** The same place in a step bored in soft jaws. */
    GripPlace inStep() {
        return new GripPlace(headstock, stop, inner, diameter, sides, gripped, true);
    }

    /** Whether a step holds the work here by so much: a thin disc that seats on its back. */
    boolean isHeldInStep(Standing work, Length grip) {
        return isSeated(work, grip)
                && GripRules.isThin(diameter, Overhang.of(work, this).length())
                && !grip.isLessThan(GripRules.LEAST_IN_STEP);
    }

    /** How much of the stretch jaws so long can use. */
    Length grip(Length jawLength) {
        return Length.least(jawLength, headstock.distance(jawFront(), inner));
    }

    /** The shortest grip that holds the work here, where it is gripped by so much. */
    Length leastGrip(Standing work, Length grip, Holding.Support support) {
        Length overhang = Overhang.of(work, this).length();
        return isSeated(work, grip) && GripRules.isDisc(diameter, overhang)
                ? GripRules.leastSeated(diameter)
                : GripRules.leastGrip(diameter, overhang, !(support instanceof Holding.Support.None));
    }

    /** Whether the work sits back against the steps of jaws that bear on so much of it: nothing but an edge lies behind. */
    private boolean isSeated(Standing work, Length grip) {
        Length behind = headstock.distance(jawFront(), work.outerEnd(headstock)).minus(grip);
        return !work.isOnBar() && !behind.isMoreThan(MOST_BEHIND);
    }

    private static void addBar(Standing work, Standing.Slot slot, List<GripPlace> places) {
        Length end = work.outerEnd(slot.bar());
        places.add(raw(work, slot.bar(), slot.barSide(), end));
        addRaw(work, slot.bar(), end, places);
    }

    /** The raw stock from the headstock's end inward, with a stop at each border of sections still raw, and close in. */
    private static void addRaw(Standing work, End headstock, Length inner, List<GripPlace> places) {
        Shape shape = work.shape();
        End free = headstock.other();
        boolean whole = true;
        int outermost = headstock == End.A ? 0 : shape.count() - 1;
        for (int i = outermost; shape.isSection(i); i = shape.neighbour(i, free)) {
            if (!work.isRaw(i)) {
                whole = false;
                break;
            }
            places.add(raw(work, headstock, shape.border(i, free), inner));
        }
        if (whole) {
            places.add(raw(work, headstock, headstock.from(work.face(free), GripRules.CLOSE_IN), inner));
            disc(work, headstock).ifPresent(places::add);
        }
    }

    /** As little of a raw disc as holds it, sitting back against the steps of the jaws. */
    private static Optional<GripPlace> disc(Standing work, End headstock) {
        Length inner = work.face(headstock);
        Length grip = GripRules.leastSeated(Blanks.gripped(work.blank()));
        Length stop = headstock.other().from(inner, grip.plus(GripRules.CLEARANCE));
        Length overhang = headstock.other().distance(stop, work.face(headstock.other()));
        boolean wanted = !work.isOnBar()
                && overhang.isPositive()
                && GripRules.isDisc(Blanks.gripped(work.blank()), overhang.plus(GripRules.CLEARANCE));
        return wanted ? Optional.of(raw(work, headstock, stop, inner)) : Optional.empty();
    }

    private static GripPlace raw(Standing work, End headstock, Length stop, Length inner) {
        return new GripPlace(
                headstock,
                stop,
                inner,
                Blanks.gripped(work.blank()),
                Blanks.sides(work.blank()),
                new Choice.Gripped.Raw());
    }

    private static Optional<GripPlace> onSection(Standing work, int index, End headstock) {
        if (work.isRaw(index) || !isClearBehind(work, index, headstock)) {
            return Optional.empty();
        }
        Shape shape = work.shape();
        End free = headstock.other();
        Length stop = headstock.from(shape.border(index, free), edge(shape.edge(index, free)));
        Length inner = free.from(shape.border(index, headstock), edge(shape.edge(index, headstock)));
        var gripped = new Choice.Gripped.OnSection(index);
        return switch (shape.section(index)) {
            case Section.Round round ->
                Optional.of(
                        new GripPlace(headstock, stop, inner, round.diameter().length(), 0, gripped));
            case Section.Polygon polygon ->
                work.isDone(new Task.Flats(index, polygon))
                        ? Optional.of(new GripPlace(
                                headstock, stop, inner, polygon.flats().length(), polygon.sides(), gripped))
                        : Optional.of(new GripPlace(headstock, stop, inner, polygon.corners(), 0, gripped));
            case Section.Cone cone -> Optional.empty();
            case Section.Threaded threaded -> Optional.empty();
            case Section.Groove groove -> Optional.empty();
            case Section.Toothed toothed
            when toothed.isThere() ->
                Optional.of(
                        new GripPlace(headstock, stop, inner, toothed.outside().length(), toothed.teeth(), gripped));
            case Section.Toothed toothed ->
                work.isDone(new Task.Teeth(index, toothed))
                        ? Optional.empty()
                        : Optional.of(new GripPlace(
                                headstock, stop, inner, toothed.outside().length(), 0, gripped));
            case Section.Knurled knurled -> Optional.empty();
            case Section.Curved curved -> Optional.empty();
        };
    }

    /** How much of a section an edge takes up, on which jaws do not bear. */
    private static Length edge(Edge edge) {
        return switch (edge) {
            case Edge.Plain plain -> Length.ZERO;
            case Edge.Chamfer chamfer -> chamfer.length().length();
            case Edge.WeldPreparation prepared -> prepared.reach();
            case Edge.Radius radius -> radius.radius().length();
        };
    }

    /** Whether nothing between a section and the headstock's end is larger than the section, so that jaws come over it. */
    private static boolean isClearBehind(Standing work, int index, End headstock) {
        Shape shape = work.shape();
        Length diameter = work.diameter(index);
        for (int i = shape.neighbour(index, headstock); shape.isSection(i); i = shape.neighbour(i, headstock)) {
            if (work.diameter(i).isMoreThan(diameter)) {
                return false;
            }
        }
        return true;
    }
}
