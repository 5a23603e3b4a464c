package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.plan.Holding;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.Optional;

/** Where the pads of a fixed steady can bear: a turned plain place, or bright bar, as near the free end as may be. */
final class SteadyPlace {
    /** From the middle of the pads to where a tool may come. */
    static final Length ROOM = Length.mm(10);

    /** From the middle of the pads to where the place must go on. */
    private static final Length HALF = Length.mm(9);

    private SteadyPlace() {}

    /**
     * The place for a steady.
     *
     * @param range the diameters it takes
     */
    static Optional<Holding.Support> find(Standing work, End free, Limits range) {
        boolean crossed =
                work.tasks().list().stream().anyMatch(task -> task instanceof Task.Crossing && work.isDone(task));
        Shape shape = work.shape();
        int outermost = free == End.A ? 0 : shape.count() - 1;
        for (int i = outermost; !crossed && shape.isSection(i); i = shape.neighbour(i, free.other())) {
            Length at = free.other().from(outer(work, i, free), ROOM);
            boolean bears = isTrue(work, i)
                    && range.contain(work.diameter(i))
                    && !free.distance(inner(work, i, free), at).minus(HALF).isNegative();
            if (bears) {
                return Overhang.between(work, at, work.face(free)).slenderness() <= GripRules.MOST_UNSUPPORTED
                        ? Optional.of(new Holding.Support.FixedSteady(at, work.diameter(i)))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Whether the work is stiff between jaws and steady, with room between them. */
    static boolean holds(Standing work, GripPlace place, Holding.Support.FixedSteady steady) {
        End free = place.headstock().other();
        boolean beyond = free.distance(place.jawFront(), steady.at()).isMoreThan(ROOM.times(3));
        return beyond && Overhang.between(work, place.jawFront(), steady.at()).slenderness() <= GripRules.MOST_CENTRED;
    }

    private static boolean isTrue(Standing work, int index) {
        return work.isRaw(index) ? work.isBright() : work.shape().section(index) instanceof Section.Round;
    }

    /** Where the section begins towards the free end: short of its edge, and of what is still to be faced off. */
    private static Length outer(Standing work, int index, End free) {
        Shape shape = work.shape();
        return free.other().from(shape.border(index, free), edge(shape.edge(index, free)));
    }

    private static Length inner(Standing work, int index, End free) {
        Shape shape = work.shape();
        return free.from(shape.border(index, free.other()), edge(shape.edge(index, free.other())));
    }

    private static Length edge(Edge edge) {
        return switch (edge) {
            case Edge.Plain plain -> Length.ZERO;
            case Edge.Chamfer chamfer -> chamfer.length().length();
            case Edge.WeldPreparation prepared -> prepared.reach();
            case Edge.Radius radius -> radius.radius().length();
        };
    }
}
